using Nestmark.Geometry;

namespace Nestmark.Input.Quantities;

/// <summary>Reads percentages ("5 %"), angles ("2 deg"), counts and plain factors.</summary>
internal static class RatioText
{
    /// <summary>A percentage from 0 to 50 as a part of one; the sign % is required, since 5 could also mean five times.</summary>
    public static Reading<double> Percent(string text)
    {
        Reading<ScannedNumber> number = NumberScanner.Scan(text);
        if (number.Value is not ScannedNumber scanned)
            return new(0, number.Fault);
        bool isGood = scanned.Rest == "%" && scanned.Value is >= 0 and <= 50;
        return isGood ? new((double)(scanned.Value / 100), null) : new(0, QuantityFaults.Percent(text));
    }

    /// <summary>An angle from 0 to 45 degrees.</summary>
    public static Reading<Angle> Degrees(string text)
    {
        Reading<ScannedNumber> number = NumberScanner.Scan(text);
        if (number.Value is not ScannedNumber scanned)
            return new(default, number.Fault);
        bool isGood = scanned.Rest is "deg" or "°" && scanned.Value is >= 0 and <= 45;
        return isGood ? new(Angle.FromDegrees((double)scanned.Value), null) : new(default, QuantityFaults.Angle(text));
    }

    /// <summary>A direction from 0 up to 360 degrees, counter-clockwise.</summary>
    public static Reading<Angle> Direction(string text)
    {
        Reading<ScannedNumber> number = NumberScanner.Scan(text);
        if (number.Value is not ScannedNumber scanned)
            return new(default, number.Fault);
        bool isGood = scanned.Rest is "deg" or "°" && scanned.Value is >= 0 and <= 360;
        return isGood ? new(Angle.FromDegrees((double)scanned.Value), null) : new(default, QuantityFaults.Direction(text));
    }

    /// <summary>The point limit: a factor from 1 to 20.</summary>
    public static Reading<double> PointLimit(string text)
    {
        Reading<ScannedNumber> number = NumberScanner.Scan(text);
        if (number.Value is not ScannedNumber scanned)
            return new(0, number.Fault);
        bool isGood = scanned.Rest.Length == 0 && scanned.Value is >= 1 and <= 20;
        return isGood ? new((double)scanned.Value, null) : new(0, QuantityFaults.Ratio(text));
    }

    /// <summary>A whole number from 1 to 1000.</summary>
    public static Reading<int> Count(string text, string what) =>
        int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int count) && count is >= 1 and <= 1000
            ? new(count, null)
            : new(0, QuantityFaults.Count(text, what));
}
