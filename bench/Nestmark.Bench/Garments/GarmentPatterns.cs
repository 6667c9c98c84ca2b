using Nestmark.Pieces;

namespace Nestmark.Bench.Garments;

/// <summary>The pieces of an invented hooded coat, drawn for this bench and for no body: only their kinds and sizes are those of real pieces.</summary>
internal static class GarmentPatterns
{
    private static readonly CutQuantity OnFold = new(1, CutKind.OnFold);
    private static readonly CutQuantity Pair = new(1, CutKind.Pairs);
    private static readonly CutQuantity Two = new(2, CutKind.Copies);

    /// <summary>The coat itself: 15 pieces, which make 25 placements on open cloth.</summary>
    public static IReadOnlyList<GarmentPattern> Coat { get; } =
    [
        new("back", OnFold, "0 0, 760 0 7 7, 740 300 -9 -14, 235 275 -38 -46, 32 205 4 -3, -14 78 -20 -12", 40),
        new("front", Pair, "80 0, 790 10 9 5, 775 300 -8 -9, 250 285 -42 -48, 40 215 -4 5, 0 88 -30 -26", 40),
        new("side", Pair, "0 0 -6 -9, 540 14 5 7, 528 150 -8 -5, 8 132 -26 -18", 40),
        new("upper sleeve", Pair, "0 120 26 38, 120 0 -14 -9, 610 42 6 6, 606 236 -10 -12, 135 300 42 30", 30),
        new("under sleeve", Pair, "0 40 -22 -30, 110 0 -12 -8, 585 38 5 4, 580 176 -11 -9, 96 196 -18 -26", 30),
        new("collar", OnFold, "0 0, 118 0 9 12, 128 250 7 9, 22 215 -12 -6", 0),
        new("yoke", OnFold, "0 0, 150 0 8 -6, 158 218 5 6, 24 205 4 -3, -13 80 -18 -12", 0),
        new("facing", Pair, "70 0 4 -4, 790 10 4 3, 792 88 -11 -9, 330 104 -14 -10, 60 152 -5 4, 0 86 -24 -16", 40),
        new("neck facing", OnFold, "0 0, 74 0 12 16, 40 158 4 5, -20 120 -22 -14", 0),
        new("belt", OnFold, "0 0, 62 0 6 -5, 66 480 9 12, 4 486 5 -6", 0),
        new("pocket", Pair, "0 12 6 7, 176 0 12 14, 214 150 9 -5, 190 178 8 7, 10 186 6 -4", 0),
        new("flap", Pair, "0 0 5 4, 88 -8 10 9, 94 176 5 6, 6 168 7 -5", 0),
        new("cuff", Pair, "0 0 4 5, 112 8 9 8, 118 262 5 4, 2 270 -9 -7", 0),
        new("welt", Two, "0 0 5 4, 52 -5 7 6, 56 168 5 5, 3 163 6 -4", 0),
        new("tab", Two, "0 0 5 5, 130 -4 9 7, 150 30 8 9, 128 62 5 5, 2 58 4 6", 0),
    ];

    /// <summary>The coat with hood, inner pieces and trimmings: 25 pieces, which make 25 placements on folded cloth.</summary>
    public static IReadOnlyList<GarmentPattern> LongCoat { get; } =
    [
        .. Coat,
        new("hood", Pair, "0 60 12 8, 130 0 16 22, 360 40 28 34, 390 250 22 14, 240 330 9 -7, 20 300 -12 -9", 0),
        new("hood band", OnFold, "0 0, 118 0 7 -5, 124 330 9 8, 6 322 -6 5", 0),
        new("inner front", Pair, "40 0 4 -4, 650 -6 7 6, 640 208 -9 -11, 225 190 -30 -36, 36 140 4 -4, 0 76 -12 -9", 25),
        new("inner back", OnFold, "0 0, 640 0 6 6, 628 282 -8 -12, 226 262 -34 -42, 30 200 4 -3, -12 76 -18 -12", 25),
        new("inner sleeve", Pair, "0 140 28 36, 112 0 -10 -8, 560 58 5 5, 556 262 -9 -11, 124 322 38 30", 25),
        new("inner pocket", Pair, "0 0 5 -4, 196 -6 14 16, 222 128 12 9, 180 160 6 5, 8 156 4 5", 0),
        new("hem guard", OnFold, "0 0, 86 0 8 10, 110 300 6 5, 24 306 -9 -6", 0),
        new("storm flap", Pair, "0 0 6 5, 250 -10 14 16, 286 150 10 12, 196 236 9 7, 14 190 5 -4", 0),
        new("stand", OnFold, "0 0, 56 0 7 9, 64 232 8 9, 10 226 -8 -6", 0),
        new("strap", Two, "0 0 5 4, 300 -6 10 9, 306 58 5 -6, 4 52 8 7", 0),
    ];
}
