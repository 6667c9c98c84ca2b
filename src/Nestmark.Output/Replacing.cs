namespace Nestmark.Output;

/// <summary>Which files may be replaced.</summary>
public enum Replacing
{
    /// <summary>Only files that the same job wrote.</summary>
    OwnFiles,

    /// <summary>Any file.</summary>
    AnyFile,
}
