using Nestmark.Yardage;

namespace Nestmark.Input.Outlines;

/// <summary>Something found in an outline: a mend worth a note, or an error.</summary>
internal sealed record Finding(Severity Severity, Fault Fault);
