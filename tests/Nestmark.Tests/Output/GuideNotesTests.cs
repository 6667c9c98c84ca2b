using System.Collections.Immutable;
using Nestmark.Nesting;
using Nestmark.Output;
using Nestmark.Yardage;

namespace Nestmark.Tests.Output;

/// <summary>Notes and pieces without a place on the guide sheet, however many there are. The notes are invented.</summary>
public sealed class GuideNotesTests
{
    private static readonly string LongReason = string.Join(' ', Enumerable.Repeat("It is deeper than the cloth.", 20));

    [Fact]
    public void A_few_notes_stand_on_the_sheet_itself()
    {
        Plan plan = PlanBuilder.Folded() with { Notes = [Note("pieces.front", "The second front is turned over.", "Turn the paper too.")] };
        PrintedPage page = Assert.Single(Read(plan));
        Assert.Contains("The second front is turned over. Turn the", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_note_on_a_drawing_says_where_in_it() =>
        Assert.Contains("smock.svg:12:5 (#front)", string.Concat(Read(PlanBuilder.Folded()).Select(page => page.Text)), StringComparison.Ordinal);

    [Fact]
    public void A_note_stands_on_the_sheet_of_its_cloth()
    {
        Plan plan = PlanBuilder.TwoCloths() with
        {
            Notes = [Note("pieces.bias band", "Of the band.", ""), Note("cloths.lining", "Of the lining.", ""), Note("cloths.shell.width", "Of the shell.", ""), Note("", "Of the job.", "")],
        };
        IReadOnlyList<PrintedPage> pages = Read(plan);
        Assert.Equal(3, pages.Count);
        Assert.All((string[])["Of the shell.", "Of the job."], words => Assert.Contains(words, pages[1].Text, StringComparison.Ordinal));
        Assert.All((string[])["Of the band.", "Of the lining."], words => Assert.Contains(words, pages[2].Text, StringComparison.Ordinal));
        Assert.DoesNotContain("Of the band.", pages[1].Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(30)]
    [InlineData(200)]
    public void Many_notes_flow_onto_further_pages_and_none_is_lost(int count) =>
        CheckNumbered(PlanBuilder.Folded() with { Notes = [.. Numbered(count).Select(number => Note("pieces.front", $"{number} {LongReason}", ""))] }, count);

    [Theory]
    [InlineData(20)]
    [InlineData(90)]
    public void Many_pieces_without_a_place_flow_onto_further_pages_and_none_is_lost(int count) =>
        CheckNumbered(Unplaced(PlanBuilder.Folded(), count), count);

    [Fact]
    public void Where_no_piece_has_a_place_every_reason_is_still_told() => CheckNumbered(Unplaced(PlanBuilder.Nothing(), 60), 60);

    [Fact]
    public void A_word_longer_than_a_page_is_broken_and_stays_within_it()
    {
        Plan plan = PlanBuilder.Folded() with { Notes = [Note("", new string('x', 20_000), "")] };
        IReadOnlyList<PrintedPage> pages = Read(plan);
        Assert.True(pages.Count > 2);
        Assert.Equal(20_000, pages.Sum(page => page.Letters.Count(letter => letter.Value == "x" && letter.PointSize > 7.9)), 100.0);
        CheckMargins(pages);
    }

    [Fact]
    public void The_lay_keeps_its_size_beside_many_notes()
    {
        Plan few = PlanBuilder.Folded() with { Notes = [] };
        Plan many = few with { Notes = [.. Numbered(200).Select(number => Note("pieces.front", $"{number} {LongReason}", ""))] };
        Assert.True(LayWidthOn(Read(many)[0]) > 0.9 * LayWidthOn(Read(few)[0]));
    }

    private static double LayWidthOn(PrintedPage page) => page.Lines
        .Where(line => line.Count == 2 && line[0].Y == line[1].Y).Max(line => Math.Abs(line[0].X - line[1].X));

    private static void CheckNumbered(Plan plan, int count)
    {
        IReadOnlyList<PrintedPage> pages = Read(plan);
        Assert.True(pages.Count > 1);
        Assert.Contains($"{count} in all: see the next page.", pages[0].Text, StringComparison.Ordinal);
        string text = string.Concat(pages.Select(page => page.Text));
        Assert.All(Numbered(count), number => Assert.Contains(number, text, StringComparison.Ordinal));
        CheckMargins(pages);
    }

    private static void CheckMargins(IEnumerable<PrintedPage> pages)
    {
        foreach (PrintedPage page in pages)
        {
            Assert.All(page.Letters, letter => Assert.InRange(letter.Location.Y * 25.4 / 72, 9, page.HeightMillimeters - 9));
            Assert.All(page.Letters, letter => Assert.InRange(letter.Location.X * 25.4 / 72, 9, page.WidthMillimeters - 9));
        }
    }

    private static Plan Unplaced(Plan plan, int count)
    {
        ImmutableArray<Unplaced> unplaced = [.. Numbered(count).Select(number => new Unplaced("piece", "", $"{number} {LongReason}"))];
        ClothPlan cloth = plan.Cloths[0];
        return plan with { Cloths = [cloth with { Marker = cloth.Marker with { Unplaced = unplaced } }], Notes = [] };
    }

    private static IEnumerable<string> Numbered(int count) => Enumerable.Range(1, count).Select(number => FormattableString.Invariant($"#{number:000}"));

    private static Problem Note(string item, string what, string hint) => new(Severity.Note, new Place("job.yaml", 4, 3, item), what, hint);

    private static IReadOnlyList<PrintedPage> Read(Plan plan) => PrintedPage.Read(GuidePdf.Write(plan));
}
