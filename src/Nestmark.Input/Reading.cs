namespace Nestmark.Input;

/// <summary>A value read from the user's text, or the fault that stands in its way.</summary>
/// <param name="Value">Meaningful only without a fault.</param>
/// <param name="Fault"><c>null</c> when the value is good.</param>
internal readonly record struct Reading<T>(T? Value, Fault? Fault);
