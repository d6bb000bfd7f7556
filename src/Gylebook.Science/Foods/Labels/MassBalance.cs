namespace Gylebook.Science.Foods.Labels;

/// <summary>A part of the mass of a food, as a panel sees it; g per 100 g.</summary>
internal enum MassPart
{
    Protein,
    Fat,
    SaturatedFat,
    Carbohydrate,
    AvailableCarbohydrate,
    Fibre,
    Sugars,
    AddedSugars,
    Polyols,
    StarchAndOther,
    Starch,
    Remainder,
    Sodium,
    Potassium,
}

/// <summary>Narrows every part by all the others until nothing moves.</summary>
/// <remarks>
/// <para>What: interval propagation over the sums and the part-of relations of a food's mass.</para>
/// <para>Symbols: each <see cref="MassPart"/> in g per 100 g.</para>
/// <para>Source: carbohydrate by difference, 100 − water − ash − protein − fat − alcohol (FAO, Food energy, methods of
/// analysis and conversion factors, Food and Nutrition Paper 77, 2003, chapter 2); hull consistency of a system of sums,
/// Benhamou, Goualard, Granvilliers and Puget, Revising hull and box consistency, ICLP 1999 (both from memory).</para>
/// <para>Valid for: any intervals; no relation shares two parts with another, so that the bounds reached are the
/// tightest that these relations imply, and an empty one means that no composition fits.</para>
/// <para>Accuracy: every step only intersects: bounds never widen, and stopping early stays correct.</para>
/// </remarks>
internal static class MassBalance
{
    public const int PartCount = (int)MassPart.Potassium + 1;

    // The longest chain of relations is six; the rounds beyond that are for the last bits of directed rounding.
    private const int MostRounds = 50;

    private static readonly (MassPart Total, MassPart[] Parts)[] Sums =
    [
        (MassPart.Carbohydrate, [MassPart.AvailableCarbohydrate, MassPart.Fibre]),
        (MassPart.AvailableCarbohydrate, [MassPart.Sugars, MassPart.Polyols, MassPart.StarchAndOther]),
    ];

    private static readonly MassPart[] Everything =
        [MassPart.Protein, MassPart.Fat, MassPart.Carbohydrate, MassPart.Remainder];

    private static readonly (MassPart Part, MassPart Whole)[] PartOf =
    [
        (MassPart.AddedSugars, MassPart.Sugars),
        (MassPart.SaturatedFat, MassPart.Fat),
        (MassPart.Starch, MassPart.StarchAndOther),
        (MassPart.Sodium, MassPart.Remainder),
        (MassPart.Potassium, MassPart.Remainder),
    ];

    /// <summary>Nothing known: each part is from 0 to 100 g.</summary>
    public static Interval[] Unknown()
    {
        var parts = new Interval[PartCount];
        Array.Fill(parts, new Interval(0, 100));
        return parts;
    }

    /// <summary>Narrows the parts in place. False when no composition fits; the parts are then meaningless.</summary>
    public static bool TryTighten(Span<Interval> parts)
    {
        for (int round = 0; round < MostRounds; round++)
        {
            bool moved = false;
            foreach ((MassPart total, MassPart[] terms) in Sums)
            {
                moved |= TightenSum(parts, parts[(int)total], terms, out Interval sum);
                moved |= Narrow(parts, total, sum);
            }

            moved |= TightenSum(parts, Interval.Exactly(100), Everything, out _);
            foreach ((MassPart part, MassPart whole) in PartOf)
            {
                Interval small = parts[(int)part];
                Interval large = parts[(int)whole];
                moved |= Narrow(parts, part, new(0, large.High, false, large.HighIsOpen));
                moved |= Narrow(parts, whole, new(small.Low, double.PositiveInfinity, small.LowIsOpen));
            }

            if (AnyEmpty(parts))
            {
                return false;
            }

            if (!moved)
            {
                break;
            }
        }

        return true;
    }

    // Each term is the total less the other terms.
    private static bool TightenSum(Span<Interval> parts, Interval total, MassPart[] terms, out Interval sum)
    {
        bool moved = false;
        foreach (MassPart term in terms)
        {
            Interval others = default;
            foreach (MassPart other in terms)
            {
                others = other == term ? others : others + parts[(int)other];
            }

            moved |= Narrow(parts, term, total - others);
        }

        sum = default;
        foreach (MassPart term in terms)
        {
            sum += parts[(int)term];
        }

        return moved;
    }

    private static bool Narrow(Span<Interval> parts, MassPart part, Interval by)
    {
        Interval before = parts[(int)part];
        parts[(int)part] = before.Intersect(by);
        return parts[(int)part] != before;
    }

    private static bool AnyEmpty(ReadOnlySpan<Interval> parts)
    {
        foreach (Interval part in parts)
        {
            if (part.IsEmpty)
            {
                return true;
            }
        }

        return false;
    }
}
