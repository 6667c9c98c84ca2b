namespace Nestmark.Nesting.Search;

/// <summary>An item that the print holds.</summary>
/// <param name="Along">Index of its phase along the cloth, or -1 when it is free there.</param>
/// <param name="AlongShift">Its shift there, micrometers.</param>
/// <param name="Across">Index of its phase across the cloth, or -1.</param>
/// <param name="AcrossShift">Its shift there.</param>
/// <param name="Ways">Its ways, as the search has them.</param>
/// <param name="KeepsHeading">Whether it belongs to a nap group.</param>
internal sealed record HeldItem(int Along, double AlongShift, int Across, double AcrossShift, HeldWay[] Ways, bool KeepsHeading);
