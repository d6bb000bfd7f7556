namespace Gylebook.Science.Quantities;

/// <summary>What a text is in another unit.</summary>
/// <param name="Number">The number in that unit.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Kind">What it measures.</param>
public sealed record Conversion(double Number, Unit Unit, QuantityKind Kind)
{
    /// <inheritdoc/>
    public override string ToString() => UnitTable.WithSymbol(Number, Unit, UnitTable.UsualDigits);
}

/// <summary>Turns a typed value into another unit, whatever it measures.</summary>
public static class UnitConversion
{
    /// <summary>Turns "12.5 P" into SG.</summary>
    /// <param name="text">Number and unit.</param>
    /// <param name="toUnit">The unit wanted.</param>
    /// <param name="conversion">What came out; null when nothing did.</param>
    /// <param name="problem">What is wrong, in plain words; empty when nothing.</param>
    public static bool TryConvert(string? text, string? toUnit, out Conversion? conversion, out string problem)
    {
        conversion = null;
        string wanted = toUnit?.Trim() ?? "";
        List<QuantityKind> kinds = [.. UnitTable.Kinds.Where(kind => wanted.Length > 0 && kind.Find(wanted) is not null)];
        if (kinds.Count == 0)
        {
            problem = UnknownUnit(wanted);
            return false;
        }

        string firstProblem = "";
        foreach (QuantityKind kind in kinds)
        {
            if (UnitReading.TryRead(text, kind, out UnitReading reading, out problem))
            {
                return TryConvert(reading, kind, kind.Find(wanted)!, out conversion, out problem);
            }

            firstProblem = firstProblem.Length == 0 ? problem : firstProblem;
        }

        problem = firstProblem;
        return false;
    }

    private static bool TryConvert(
        UnitReading reading, QuantityKind kind, Unit wanted, out Conversion? conversion, out string problem)
    {
        conversion = null;
        if (!reading.Unit.Scale.TryToBase(reading.Number, out double inBase)
            || !wanted.Scale.TryFromBase(inBase, out double number))
        {
            problem = UnitReading.OutsideCurve(reading.Text, reading.Unit, wanted);
            return false;
        }

        problem = Refusal(reading, kind, inBase);
        if (problem.Length > 0)
        {
            return false;
        }

        // The same unit gives the same number, to the last digit.
        conversion = new Conversion(wanted == reading.Unit ? reading.Number : number, wanted, kind);
        return true;
    }

    private static string Refusal(UnitReading reading, QuantityKind kind, double inBase)
    {
        if (reading.CommaMightGroup && reading.Unit.Scale.TryToBase(reading.Number * 1000, out double grouped)
            && Outside(kind, grouped) is null)
        {
            return $"{reading.Text}: the comma could be a decimal comma or group thousands; write "
                + $"{UnitTable.Digits(reading.Number, 15)} or {UnitTable.Digits(reading.Number * 1000, 15)}.";
        }

        return Outside(kind, inBase) is { } limits
            ? $"{reading.Text}: {kind.Noun} is from {kind.RangeOf(limits)}."
            : "";
    }

    /// <summary>The limits of the kind that a value breaks, or null when it breaks none.</summary>
    private static QuantityLimits? Outside(QuantityKind kind, double inBase)
    {
        foreach (QuantityLimits limits in kind.Quantities)
        {
            bool reachable = kind.WithSymbol(limits.Unit).Scale.TryFromBase(inBase, out double own);
            if (!reachable || !limits.Allow(own))
            {
                return limits;
            }
        }

        return null;
    }

    private static string UnknownUnit(string wanted)
    {
        if (wanted.Length == 0)
        {
            return "Nothing to convert to: name a unit.";
        }

        AmbiguousUnit? twice = UnitTable.Kinds.Select(kind => kind.FindAmbiguous(wanted)).FirstOrDefault(unit => unit is not null);
        return twice is null
            ? $"{wanted}: no unit of that name is known here; among those known are kg, L, °C, bar, SG, °P, SRM, % ABV, volumes, mg/L CaCO3."
            : UnitReading.TwoMeanings(wanted, wanted, twice);
    }
}
