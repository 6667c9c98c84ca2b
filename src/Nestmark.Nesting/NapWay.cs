namespace Nestmark.Nesting;

/// <summary>Which way up a placement lies, against the nap.</summary>
public enum NapWay
{
    /// <summary>The way that one-way cloth asks for: the piece as drawn, its x axis along the cloth.</summary>
    Along,

    /// <summary>Turned round by half a turn.</summary>
    Against,
}
