using System.Collections.Immutable;
using Nestmark.Input.Drafting;
using Nestmark.Input.Seams;
using Nestmark.Input.Yaml;
using Nestmark.Nesting;
using Nestmark.Pieces;
using Nestmark.Yardage;
using Nestmark.Yardage.Seams;

namespace Nestmark.Input;

/// <summary>Reads a job file and the drawings it names. Never throws for what they hold; reports every problem at once.</summary>
public static class JobReader
{
    private const long LongestFileBytes = 4L << 20;

    /// <summary>Reads the job.</summary>
    /// <param name="path">The job file, as the user named it; drawings are looked up from its folder.</param>
    /// <param name="files">Where files come from.</param>
    public static JobReading Read(string path, IFileSource files)
    {
        ProblemList problems = new();
        List<string> filesRead = [];
        Job? job = null;
        DigestingFiles digesting = new(files);
        if (Draft(path, digesting, problems, filesRead) is JobDraft draft)
        {
            ImmutableArray<JobPiece> pieces = new PieceLineUp(draft, Made).All();
            ImmutableArray<JobSeam> seams = SeamTurns.Told(draft, SeamFinding.Found(draft, pieces), pieces);
            pieces = SeamZones.Drawn(draft, pieces, seams);
            ImmutableArray<MatchRule> matches = MatchReader.Checked(draft, pieces);
            if (!problems.HasErrors)
                job = new Job(draft.Title, Path.GetFileName(path), draft.Context.System, pieces, draft.Cloths, draft.Sizes) { Remnants = draft.Remnants, Seams = seams, Matches = matches };

            JobPiece? Made(DraftedPiece piece) => Make(piece, draft);
        }
        return new JobReading(job, Sorted(problems.All, filesRead), [.. filesRead]) { Digest = digesting.Digest };
    }

    /// <summary>Everything up to the making of pieces.</summary>
    internal static JobDraft? Draft(string path, IFileSource files, ProblemList problems, List<string> filesRead)
    {
        FileContent content = files.Read(path, LongestFileBytes);
        Fault? fault = content.State switch
        {
            FileState.Missing => JobFaults.MissingFile(path),
            FileState.TooLarge => JobFaults.TooLarge(LongestFileBytes >> 20),
            FileState.Unreadable => JobFaults.Unreadable(),
            _ => null,
        };
        if (fault is not null)
        {
            problems.Add(Severity.Error, new Place(path, 0, 0, ""), fault);
            return null;
        }
        filesRead.Add(path);
        MapNode? map = YamlTree.Read(content.Bytes.Span, path, problems);
        return map is null ? null : JobDraftReader.Read(map, new JobContext(path, problems), files, filesRead);
    }

    private static JobPiece? Make(DraftedPiece piece, JobDraft draft)
    {
        PieceResult result = PieceMaking.Make(piece.Draft);
        string title = piece.Draft.Size.Length == 0 ? piece.Draft.Name : piece.Draft.Name + " " + piece.Draft.Size;
        foreach (PieceFault fault in result.Faults)
        {
            string drawnAt = piece.Keys.IsInShape(fault.Subject) ? piece.DrawnAt : "";
            (JobNode node, string item) = piece.Keys.PlaceOf(fault.Subject);
            Severity severity = fault.Weight == FaultWeight.Error ? Severity.Error : Severity.Note;
            draft.Context.Problems.Add(severity, draft.Context.PlaceOf(node, item), JobFaults.PieceFault(title, drawnAt, fault));
        }
        if (result.Piece is null || (piece.Cloth.Length == 0 && draft.Cloths.IsEmpty))
            return null;
        LeastReader.Check(piece, result.Piece, draft.Context);
        string cloth = piece.Cloth.Length == 0 ? draft.Cloths[0].Name : piece.Cloth;
        return new JobPiece(result.Piece, cloth, draft.Context.PlaceOf(piece.Keys.Self.Node, piece.Keys.Self.Item))
        {
            Draft = piece.Draft,
            Before = piece.Before,
            BeforeShift = piece.ShiftOfBefore(result.Piece),
            Changes = piece.Changes,
        };
    }

    private static ImmutableArray<Problem> Sorted(IReadOnlyList<Problem> problems, List<string> files) =>
    [
        .. problems.OrderBy(problem => files.IndexOf(problem.Where.File)).ThenBy(problem => problem.Where.Line).ThenBy(problem => problem.Where.Column),
    ];
}
