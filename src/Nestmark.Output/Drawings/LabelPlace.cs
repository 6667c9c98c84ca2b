using Nestmark.Geometry;

namespace Nestmark.Output.Drawings;

/// <summary>A place found for a label.</summary>
/// <param name="Center">Middle of the block.</param>
/// <param name="Block">The block, scaled to fit.</param>
/// <param name="Turn">How it lies.</param>
internal sealed record LabelPlace(Spot Center, TextBlock Block, LabelTurn Turn)
{
    /// <summary>What it covers, with a little air.</summary>
    public Area Area
    {
        get
        {
            (double x, double y) = Turn == LabelTurn.Upright
                ? (Block.WidthMillimeters, Block.HeightMillimeters)
                : (Block.HeightMillimeters, Block.WidthMillimeters);
            return new Area(
                Center.XMillimeters - x / 2, Center.YMillimeters - y / 2, Center.XMillimeters + x / 2, Center.YMillimeters + y / 2)
                .Grown(Block.Lines[0].SizeMillimeters * 0.15);
        }
    }

    /// <summary>Draws the block there.</summary>
    public void Draw(Drawing drawing) => Block.Draw(drawing, Center, Turn == LabelTurn.Upright ? Angle.Zero : Angle.Quarter);
}
