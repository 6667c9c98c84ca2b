namespace Nestmark.Yardage;

/// <summary>How much a problem matters.</summary>
public enum Severity
{
    /// <summary>Worth knowing; planning goes on.</summary>
    Note,

    /// <summary>Nothing can be planned until it is mended.</summary>
    Error,
}
