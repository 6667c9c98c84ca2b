namespace Nestmark.Pieces.Seams;

/// <summary>Two notches that are to meet, one on each side.</summary>
/// <param name="First">The notch on the first side.</param>
/// <param name="Second">The notch on the second side.</param>
/// <param name="ApartMillimeters">How far apart they come, the take-up counted; zero or more.</param>
public sealed record NotchMeeting(NotchAlong First, NotchAlong Second, double ApartMillimeters);
