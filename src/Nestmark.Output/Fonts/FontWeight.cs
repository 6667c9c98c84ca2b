namespace Nestmark.Output.Fonts;

/// <summary>How heavy letters are.</summary>
internal enum FontWeight
{
    Regular,
    Bold,
}
