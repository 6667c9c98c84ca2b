using System.Collections.Immutable;
using Nestmark.Yardage;
using Nestmark.Yardage.Charts;

namespace Nestmark.Cli;

/// <summary>From the options of <c>nestmark chart</c> to the request, once the job is known.</summary>
internal static class ChartRequests
{
    private const int UsualWidths = 4;

    /// <summary>The request, or what is wrong with the options.</summary>
    public static (ChartRequest? Request, ImmutableArray<string> Faults) Of(Job job, ChartOptions options)
    {
        string[] cloths = options.Cloth switch
        {
            "" => [job.Cloths[0].Name],
            "all" when job.Cloths.All(cloth => cloth.Name != "all") => [.. job.Cloths.Select(cloth => cloth.Name).Where(name => job.Pieces.Any(piece => piece.Cloth == name))],
            _ => [options.Cloth],
        };
        string[] known = [.. job.Sizes.Select(size => size.Size)];
        ImmutableArray<string> sizes = options.Sizes.IsEmpty ? [.. known] : options.Sizes;
        List<string> faults = [];
        if (cloths is [string only] && job.Cloths.All(cloth => cloth.Name != only))
            faults.Add($"There is no cloth '{only}' in this job; there are: {string.Join(", ", job.Cloths.Select(cloth => cloth.Name))}.");
        if (known is [""] && !options.Sizes.IsEmpty)
            faults.Add("The job has no sizes; leave --sizes out.");
        else if (sizes.FirstOrDefault(size => !known.Contains(size)) is string unknown)
            faults.Add($"There is no size '{unknown}' in this job; there are: {string.Join(", ", known)}.");
        if (faults.Count > 0)
            return (null, [.. faults]);
        ImmutableArray<Geometry.Length> widths = options.Widths.IsEmpty ? [.. LengthWords.WordingOf(job.System).WidthsOnSale.Take(UsualWidths)] : options.Widths;
        return (new ChartRequest([.. cloths], sizes, widths, options.Naps, options.Effort), []);
    }
}
