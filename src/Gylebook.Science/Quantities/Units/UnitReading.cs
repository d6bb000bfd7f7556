namespace Gylebook.Science.Quantities;

/// <summary>A number and the unit it was typed in, with the words for when it cannot be read.</summary>
/// <param name="Text">What was typed, without the spaces around it.</param>
/// <param name="Number">The number.</param>
/// <param name="Unit">The unit, typed or understood.</param>
/// <param name="CommaMightGroup">Whether its comma could group thousands.</param>
internal readonly record struct UnitReading(string Text, double Number, Unit Unit, bool CommaMightGroup)
{
    /// <summary>Reads a number and one of the kind's units.</summary>
    public static bool TryRead(string? text, QuantityKind kind, out UnitReading reading, out string problem)
    {
        reading = default;
        string typed = text?.Trim() ?? "";
        if (typed.Length == 0)
        {
            problem = $"Nothing entered: {kind.Noun} is a number with {kind.UnitList}.";
            return false;
        }

        if (!NumberWithUnit.TryCut(typed, out NumberWithUnit parts, out string wrong))
        {
            problem = $"{Shortened(typed)}: {wrong}; {kind.Noun} is written with {kind.UnitList}.";
            return false;
        }

        if (!TryUnit(typed, parts, kind, out Unit? unit, out problem))
        {
            return false;
        }

        reading = new UnitReading(typed, parts.Number, unit!, parts.CommaMightGroup);
        return true;
    }

    /// <summary>Why a value on one scale has no counterpart on the other.</summary>
    public static string OutsideCurve(string text, Unit from, Unit to)
    {
        string range = ((from.Scale as CurvedScale) ?? (to.Scale as CurvedScale))?.ValidFor ?? "";
        return $"{text}: {from.Symbol} and {to.Symbol} convert from {range} only.";
    }

    /// <summary>Why a word is not taken for one unit: it is two.</summary>
    public static string TwoMeanings(string text, string word, AmbiguousUnit twice, string number = "") =>
        $"{text}: {word} could be {string.Join(" or ", twice.Candidates)}; write "
        + string.Join(" or ", twice.Candidates.Select(unit => $"{number} {unit}".Trim())) + ".";

    /// <summary>What a unit measures, when it measures anything: "a mass", "a concentration or a carbonation".</summary>
    public static string WhatItMeasures(string unit) => string.Join(" or ", UnitTable.Kinds
        .Where(kind => kind.Find(unit) is not null || kind.FindAmbiguous(unit) is not null)
        .Select(kind => kind.Noun));

    private static bool TryUnit(string typed, NumberWithUnit parts, QuantityKind kind, out Unit? unit, out string problem)
    {
        problem = "";
        if (parts.UnitText.Length == 0)
        {
            return TryBare(typed, parts.Number, kind, out unit, out problem);
        }

        unit = kind.Find(parts.UnitText);
        if (unit is not null)
        {
            return true;
        }

        if (kind.FindAmbiguous(parts.UnitText) is { } twice)
        {
            problem = TwoMeanings(typed, parts.UnitText, twice, parts.NumberText);
            return false;
        }

        string measured = WhatItMeasures(parts.UnitText);
        problem = measured.Length == 0
            ? $"{typed}: {kind.Noun} is written with {kind.UnitList}."
            : $"{typed}: {parts.UnitText} measures {measured}; {kind.Noun} is written with {kind.UnitList}.";
        return false;
    }

    private static bool TryBare(string typed, double number, QuantityKind kind, out Unit? unit, out string problem)
    {
        unit = null;
        problem = "";
        if (kind.Bare is not { } bare)
        {
            problem = $"{typed}: the unit is missing; {kind.Noun} is written with {kind.UnitList}.";
            return false;
        }

        if (number < bare.Low || number > bare.High)
        {
            problem = $"{typed}: without a unit, {kind.Noun} is from {UnitTable.Digits(bare.Low)} to {UnitTable.Digits(bare.High)}; "
                + $"otherwise write it with {kind.UnitList}.";
            return false;
        }

        unit = kind.WithSymbol(bare.Symbol);
        return true;
    }

    private static string Shortened(string text) => text.Length <= 40 ? text : string.Concat(text.AsSpan(0, 40), "…");
}
