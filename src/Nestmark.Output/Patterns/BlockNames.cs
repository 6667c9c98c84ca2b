using System.Globalization;
using Nestmark.Pieces;

namespace Nestmark.Output.Patterns;

/// <summary>Names of pieces that every program can read: ASCII letters, digits, hyphens and underscores, each once.</summary>
internal sealed class BlockNames
{
    private readonly Dictionary<Piece, string> _names = [];

    public BlockNames(IEnumerable<Piece> pieces)
    {
        HashSet<string> taken = new(StringComparer.OrdinalIgnoreCase);
        foreach (Piece piece in pieces)
        {
            string plain = Plain(piece.Size.Length == 0 ? piece.Name : piece.Name + "-" + piece.Size);
            string name = plain;
            for (int number = 2; !taken.Add(name); number++)
                name = string.Create(CultureInfo.InvariantCulture, $"{plain}-{number}");
            _names.Add(piece, name);
        }
    }

    /// <summary>The name of one of the pieces.</summary>
    public string Of(Piece piece) => _names[piece];

    private static string Plain(string name) => new([.. name.Select(letter => char.IsAsciiLetterOrDigit(letter) || letter == '-' ? letter : '_')]);
}
