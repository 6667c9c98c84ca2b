using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Input.Alterations;
using Nestmark.Input.Outlines;
using Nestmark.Input.Quantities;
using Nestmark.Input.Seams;
using Nestmark.Input.Yaml;
using Nestmark.Yardage;
using Nestmark.Yardage.Seams;

namespace Nestmark.Input;

/// <summary>Reads the keys of a job file: design.md 5.1.</summary>
internal static class JobDraftReader
{
    private static readonly (string, LengthUnit)[] UnitWords =
        [("mm", LengthUnit.Millimeter), ("cm", LengthUnit.Centimeter), ("in", LengthUnit.Inch)];


    /// <summary>The draft; parts with errors are left out of it.</summary>
    public static JobDraft Read(MapNode map, JobContext fileContext, IFileSource files, List<string> filesRead)
    {
        MapReader job = new(map, "", fileContext);
        CheckVersion(job, fileContext);
        string title = Require(job, "title", "title: with the name of the garment") ? job.FindText("title")?.Text ?? "" : "";
        bool hasUnits = Require(job, "units", "units: cm (or mm or in), the unit of bare numbers");
        JobContext context = fileContext with { Units = hasUnits ? job.ReadWord("units", UnitWords, LengthUnit.Centimeter) : LengthUnit.Centimeter };
        Length seam = job.Read("seam", context.ZeroOrMore, context.Default(15, 0.625));
        ImmutableArray<SizeCount> sizes = Sizes(job, context);
        ImmutableArray<Cloth> cloths = ClothReader.Read(job, context);
        OutlineLibrary outlines = new(files, context, DrawingSettingsReader.Read(job, context));
        ImmutableArray<DraftedPiece> pieces = AlteredPieces.Of(
            job, context, sizes, read => Pieces(job, context, new PieceReader(context, outlines, read, seam)), out AlterHistory history);
        ImmutableArray<JobSeam> seams = SeamReader.Read(job, context);
        ImmutableArray<Remnant> remnants = RemnantReader.Read(job, cloths, outlines, context);
        ImmutableArray<MatchDraft> matches = MatchReader.Read(job, context);
        outlines.NoteUnused();
        job.RefuseTheRest();
        CheckCloths(pieces, cloths, context);
        filesRead.AddRange(outlines.FilesRead);
        return new JobDraft(title, context, pieces, cloths, sizes, remnants) { Seams = seams, History = history, PieceNames = PieceNames(job), Matches = matches };
    }

    private static void CheckVersion(MapReader job, JobContext context)
    {
        if (Require(job, "nestmark", "nestmark: 1, the version of the job file") && job.FindText("nestmark") is TextNode version && version.Text != "1")
            context.Error(version, "nestmark", JobFaults.WrongVersion(version.Text));
    }

    private static bool Require(MapReader job, string key, string example)
    {
        if (job.Find(key) is not null)
            return true;
        job.Context.Error(job.Map, key, JobFaults.MissingKey(key, example));
        return false;
    }

    private static ImmutableArray<DraftedPiece> Pieces(MapReader job, JobContext context, PieceReader reader)
    {
        if (!Require(job, "pieces", "pieces: { pocket: { rectangle: 16 x 18, cut: 2 } }"))
            return [];
        return context.AsMap(job.Find("pieces")!.Value, "pieces") is MapReader pieces ? reader.Read(pieces) : [];
    }

    private static ImmutableArray<string> PieceNames(MapReader job) =>
        job.Find("pieces")?.Value is MapNode pieces ? [.. pieces.Entries.Select(entry => entry.Key.Text)] : [];

    private static ImmutableArray<SizeCount> Sizes(MapReader job, JobContext context)
    {
        ImmutableArray<SizeCount> none = [new SizeCount("", 1)];
        if (job.Find("sizes") is not MapEntry entry || context.AsMap(entry.Value, "sizes") is not MapReader sizes)
            return none;
        if (sizes.Map.Entries.IsEmpty)
            context.Error(entry.Value, "sizes", JobFaults.NoSizes());
        List<SizeCount> counts = [];
        foreach (MapEntry size in sizes.Map.Entries)
        {
            if (!JobNames.IsGood(size.Key.Text))
                context.Error(size.Key, "sizes", JobFaults.BadName(size.Key.Text));
            counts.Add(new SizeCount(size.Key.Text, sizes.Read(size.Key.Text, text => RatioText.Count(text, "garments"), 1)));
        }
        return counts.Count == 0 ? none : [.. counts];
    }

    private static void CheckCloths(ImmutableArray<DraftedPiece> pieces, ImmutableArray<Cloth> cloths, JobContext context)
    {
        string[] names = [.. cloths.Select(cloth => cloth.Name)];
        foreach (DraftedPiece piece in pieces)
        {
            if (piece.Keys.Cloth.NamedAt is JobNode at && !names.Contains(piece.Cloth))
                context.Error(at, piece.Keys.Cloth.NamedIn, JobFaults.UnknownCloth(piece.Cloth, names));
        }
    }
}
