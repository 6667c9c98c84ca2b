using Nestmark.Output.Fonts;
using Nestmark.Yardage;

namespace Nestmark.Output.Words;

/// <summary>Says so when names hold letters that the print font lacks.</summary>
internal static class LetterNote
{
    /// <summary>The note, or an empty text when every letter can be printed.</summary>
    public static string For(Plan plan)
    {
        IEnumerable<string> texts = plan.Cloths
            .SelectMany(cloth => cloth.Marker.Placements.SelectMany(placement => new[] { placement.Piece.Name, placement.Size }).Append(cloth.Cloth.Name))
            .Append(plan.Job.Title);
        return texts.All(text => PrintFont.Regular.Covers(CleanText.OneLine(text)))
            ? ""
            : $"Letters that the print font does not have are printed as {PrintFont.Missing}; the numbers tell such pieces apart.";
    }
}
