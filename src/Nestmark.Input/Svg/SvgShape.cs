using System.Collections.Immutable;
using System.Xml.Linq;

namespace Nestmark.Input.Svg;

/// <summary>A drawn shape of a piece, in millimeters, y up.</summary>
/// <param name="Element">Where it stands in the file.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Label">Its title; may be empty.</param>
/// <param name="SubPaths">Its runs of segments; one or more.</param>
internal sealed record SvgShape(XElement Element, SvgRole Role, string Label, ImmutableArray<SubPath> SubPaths);
