using System.IO.Compression;
using UglyToad.PdfPig.Filters;
using UglyToad.PdfPig.Tokens;

namespace Nestmark.Input.Pdf;

/// <summary>Unpacks streams within bounds, since the library itself has none: in each stream, in all of them, and in their number.</summary>
/// <remarks>A form is unpacked each time it is drawn, so the number of streams also bounds forms that draw forms many times over.</remarks>
internal sealed class BoundedFilters(IFilterProvider inner) : IFilterProvider
{
    private const int MostStreams = 20_000;
    private const int LongestLzwBytes = 64 << 10;
    private const int MostColumns = 1 << 20;

    private int _streams;
    private long _decoded;

    /// <inheritdoc/>
    public IReadOnlyList<IFilter> GetFilters(DictionaryToken dictionary)
    {
        if (++_streams > MostStreams)
            throw new InvalidDataException("more than 20,000 streams");
        IReadOnlyList<IFilter> filters = inner.GetFilters(dictionary);
        return filters.Count > PdfLimits.MostFilters ? throw new InvalidDataException("more than 3 filters on a stream") : [.. filters.Select(Bounded)];
    }

    /// <inheritdoc/>
    public IReadOnlyList<IFilter> GetNamedFilters(IReadOnlyList<NameToken> names) => [.. inner.GetNamedFilters(names).Select(Bounded)];

    /// <inheritdoc/>
    public IReadOnlyList<IFilter> GetAllFilters() => [.. inner.GetAllFilters().Select(Bounded)];

    private IFilter Bounded(IFilter filter) => filter is Filter ? filter : new Filter(filter, this);

    private void Count(long bytes)
    {
        _decoded += bytes;
        if (bytes > PdfLimits.LongestStreamBytes || _decoded > PdfLimits.MostDecodedBytes)
            throw new InvalidDataException("streams unpack to more than 64 MiB each or 192 MiB in all");
    }

    private sealed class Filter(IFilter filter, BoundedFilters bounds) : IFilter
    {
        public bool IsSupported => filter.IsSupported;

        public Memory<byte> Decode(Memory<byte> input, DictionaryToken streamDictionary, IFilterProvider filterProvider, int filterIndex)
        {
            if (filter is FlateFilter)
                bounds.Count(Inflated(input.Span));
            else if (filter is LzwFilter && input.Length > LongestLzwBytes)
                throw new InvalidDataException("an LZW stream of more than 64 KiB");
            CheckColumns(streamDictionary);
            Memory<byte> output = filter.Decode(input, streamDictionary, filterProvider, filterIndex);
            if (filter is not FlateFilter)
                bounds.Count(output.Length);
            return output;
        }

        private static void CheckColumns(DictionaryToken dictionary)
        {
            if (!dictionary.TryGet(NameToken.DecodeParms, out IToken parameters))
                return;
            foreach (IToken one in parameters is ArrayToken array ? array.Data : [parameters])
            {
                foreach (string name in (string[])["Columns", "Colors", "BitsPerComponent"])
                {
                    if (one is DictionaryToken set && set.TryGet(NameToken.Create(name), out NumericToken number) && !(number.Double is >= 0 and <= MostColumns))
                        throw new InvalidDataException("rows of more than a million columns");
                }
            }
        }

        /// <summary>How much a packed stream holds, or how far it can be read; counted without keeping it.</summary>
        private static long Inflated(ReadOnlySpan<byte> packed)
        {
            if (packed.Length < 3)
                return 0;
            long count = 0;
            byte[] buffer = new byte[1 << 16];
            using DeflateStream stream = new(new MemoryStream(packed[2..].ToArray(), writable: false), CompressionMode.Decompress);
            try
            {
                int read;
                while (count <= PdfLimits.LongestStreamBytes && (read = stream.Read(buffer)) > 0)
                    count += read;
            }
            catch (InvalidDataException)
            {
                // What stands before the damage is what the reader will get too.
            }
            return count;
        }
    }
}
