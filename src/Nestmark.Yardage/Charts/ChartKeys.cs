using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Nestmark.Nesting;

namespace Nestmark.Yardage.Charts;

/// <summary>The key under which the finding of a cell is kept, so that an interrupted chart can be resumed.</summary>
public static class ChartKeys
{
    /// <summary>32 hexadecimal digits made of everything that the finding depends on.</summary>
    /// <param name="jobDigest">Digest of the job file and its drawings.</param>
    /// <param name="cell">The cell.</param>
    /// <param name="effort">What the search may take; its threads do not matter, since each cell is searched on one.</param>
    /// <remarks>The build of the search is a part of it: a better search finds the cells anew.</remarks>
    public static string Of(string jobDigest, ChartCell cell, Effort effort)
    {
        string build = typeof(MarkerMaking).Module.ModuleVersionId.ToString();
        string text = string.Create(
            CultureInfo.InvariantCulture,
            $"{jobDigest}\n{cell.Cloth}\n{cell.Size}\n{cell.Nap}\n{cell.Width.Micrometers}\n{effort.Seconds}\n{effort.Steps}\n{effort.Seed}\n{build}");
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)).AsSpan(0, 16));
    }
}
