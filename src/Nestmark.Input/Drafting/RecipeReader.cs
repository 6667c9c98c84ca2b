using Nestmark.Input.Yaml;
using Nestmark.Pieces;

namespace Nestmark.Input.Drafting;

/// <summary>Reads the shapes that are drafted from measures.</summary>
internal static class RecipeReader
{
    /// <summary>Their keys.</summary>
    public static readonly string[] Keys = ["band", "waistband", "ruffle", "circle_skirt", "bias", "facing", "pocket_bag"];

    /// <summary>The recipe, or <c>null</c> after an error.</summary>
    /// <param name="shape">One of the keys and its value.</param>
    /// <param name="item">The key's path.</param>
    /// <param name="cut">How often the piece is cut, where the file says so.</param>
    /// <param name="context">The job.</param>
    public static Recipe? Read(MapEntry shape, string item, CutQuantity? cut, JobContext context)
    {
        if (context.AsMap(shape.Value, item) is not MapReader reader)
            return null;
        Recipe? recipe = shape.Key.Text switch
        {
            "band" => BandRecipe.Read(shape, reader, cut),
            "waistband" => BandRecipe.ReadWaistband(shape, reader, cut),
            "ruffle" => RuffleRecipe.Read(shape, reader, cut),
            "circle_skirt" => CircleSkirtRecipe.Read(shape, reader, cut),
            "bias" => BiasRecipe.Read(shape, reader, cut),
            "facing" => FacingRecipe.Read(shape, reader, cut),
            _ => PocketBagRecipe.Read(shape, reader, cut),
        };
        reader.RefuseTheRest();
        return recipe;
    }
}
