namespace Nestmark.Geometry.NoFit;

/// <summary>One edge of the convolution of two outlines. Crossing it from right to left adds one overlapping part.</summary>
/// <param name="Start">Start.</param>
/// <param name="End">End.</param>
/// <param name="Sign">1 when swept by a convex corner, -1 (and already reversed) by a reflex one.</param>
internal readonly record struct ConvolutionSegment(Point Start, Point End, int Sign);
