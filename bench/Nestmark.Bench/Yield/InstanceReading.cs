using System.Globalization;
using System.Text.Json;

namespace Nestmark.Bench.Yield;

/// <summary>Reads instances in the JSON form of ../shared/datasets and says what is wrong with one.</summary>
internal static class InstanceReading
{
    /// <summary>The instance of a file; <c>null</c> when the file holds something else, or when it has faults.</summary>
    /// <param name="path">The file.</param>
    /// <param name="faults">Takes what is wrong, one line each.</param>
    public static Instance? Read(string path, List<string> faults)
    {
        int before = faults.Count;
        try
        {
            using JsonDocument document = JsonDocument.Parse(File.ReadAllText(path));
            JsonElement root = document.RootElement;
            bool isOther = root.ValueKind != JsonValueKind.Object || (!root.TryGetProperty("stripWidth", out _) && !root.TryGetProperty("pieces", out _));
            if (isOther)
                return null;
            Check(path, root, faults);
            return faults.Count == before ? Instance.Of(root, Path.GetFileNameWithoutExtension(path)) : null;
        }
        catch (JsonException exception)
        {
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"{path}:{exception.LineNumber + 1}:{exception.BytePositionInLine + 1}: this is not JSON. Compare with ../shared/datasets/README.md."));
        }
        catch (IOException exception)
        {
            faults.Add($"{path}: cannot be read: {exception.Message}");
        }
        return null;
    }

    private static void Check(string path, JsonElement root, List<string> faults)
    {
        if (!IsPositive(root, "stripWidth"))
            faults.Add($"{path}: stripWidth must be a number above 0.");
        if (root.TryGetProperty("name", out JsonElement name) && name.ValueKind != JsonValueKind.String)
            faults.Add($"{path}: name must be a text.");
        if (!root.TryGetProperty("pieces", out JsonElement pieces) || pieces.ValueKind != JsonValueKind.Array || pieces.GetArrayLength() == 0)
        {
            faults.Add($"{path}: pieces must be a list of one piece or more.");
            return;
        }
        int number = 0;
        foreach (JsonElement piece in pieces.EnumerateArray())
        {
            number++;
            string where = $"{path}: piece {number.ToString(CultureInfo.InvariantCulture)}";
            if (piece.ValueKind == JsonValueKind.Object)
                CheckPiece(where, piece, faults);
            else
                faults.Add($"{where}: must be an object with id, quantity, rotations and points.");
        }
    }

    private static void CheckPiece(string where, JsonElement piece, List<string> faults)
    {
        if (!piece.TryGetProperty("id", out _))
            faults.Add($"{where}: id is missing.");
        if (piece.TryGetProperty("quantity", out JsonElement quantity) && !(quantity.ValueKind == JsonValueKind.Number && quantity.TryGetInt32(out int count) && count >= 1))
            faults.Add($"{where}: quantity must be a whole number, 1 or more.");
        if (piece.TryGetProperty("rotations", out JsonElement rotations) && !(rotations.ValueKind == JsonValueKind.Array && rotations.EnumerateArray().All(IsFinite)))
            faults.Add($"{where}: rotations must be a list of degrees.");
        bool hasPoints = piece.TryGetProperty("points", out JsonElement points) && points.ValueKind == JsonValueKind.Array
            && points.GetArrayLength() >= 3 && points.EnumerateArray().All(IsPoint);
        if (!hasPoints)
            faults.Add($"{where}: points must be a list of three points or more, each [x, y].");
        else if (InstancePiece.ReadPoints(piece) is var read && InstancePiece.AreaOf(read) <= 0)
            faults.Add($"{where}: its points enclose nothing.");
    }

    private static bool IsPoint(JsonElement point) =>
        point.ValueKind == JsonValueKind.Array && point.GetArrayLength() == 2 && point.EnumerateArray().All(IsFinite);

    private static bool IsFinite(JsonElement number) =>
        number.ValueKind == JsonValueKind.Number && number.TryGetDouble(out double value) && double.IsFinite(value);

    private static bool IsPositive(JsonElement root, string name) =>
        root.TryGetProperty(name, out JsonElement number) && IsFinite(number) && number.GetDouble() > 0;
}
