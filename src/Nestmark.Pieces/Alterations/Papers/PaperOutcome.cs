namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>An altered paper, or why there is none; not yet checked.</summary>
internal readonly record struct PaperOutcome(Paper? Paper, AlterationFault? Fault)
{
    public static implicit operator PaperOutcome(Paper paper) => new(paper, null);

    public static implicit operator PaperOutcome(AlterationFault fault) => new(null, fault);
}
