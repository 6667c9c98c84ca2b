using System.Text.Json;
using Nestmark.Cloths;
using Nestmark.Nesting;
using Nestmark.Yardage;

namespace Nestmark.Output;

/// <summary>What a report says beyond the contract about how a cloth is spread: its length, folds, other forms tried, leftovers.</summary>
internal static class ReportLays
{
    /// <summary>Writes it into the object of a cloth.</summary>
    public static void Write(Utf8JsonWriter json, ClothPlan cloth)
    {
        LaySurface surface = cloth.Marker.Surface;
        json.WriteNumber("clothLength_mm", cloth.Marker.ClothLength.TotalMillimeters);
        if (surface.Form == LayForm.PartialFold)
            json.WriteNumber("foldDepth_mm", surface.Bands[0].Depth.TotalMillimeters);
        if (surface.Form == LayForm.Mixed)
            json.WriteNumber("foldedLength_mm", surface.Bands[0].To.GetValueOrDefault().TotalMillimeters);
        if (!cloth.OtherForms.IsEmpty)
        {
            json.WriteStartArray("otherForms");
            foreach (Marker other in cloth.OtherForms)
            {
                json.WriteStartObject();
                json.WriteString("lay", LayWords.Of(other.Surface.Form));
                json.WriteNumber("clothLength_mm", other.ClothLength.TotalMillimeters);
                json.WriteNumber("placements", other.Placements.Length);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        if (cloth.Leftovers is not { } table)
            return;
        json.WriteStartArray("leftovers");
        foreach ((Remnant remnant, Geometry.Point at) in table.Places)
        {
            json.WriteStartObject();
            json.WriteString("id", remnant.Name);
            json.WriteNumber("x_mm", at.XMillimeters);
            json.WriteNumber("y_mm", at.YMillimeters);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }
}
