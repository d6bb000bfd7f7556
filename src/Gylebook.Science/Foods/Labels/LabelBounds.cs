using Gylebook.Science.Foods.Labels.Rounding;

namespace Gylebook.Science.Foods.Labels;

/// <summary>What a panel guarantees about a food: g per 100 g as is, each between two ends.</summary>
/// <remarks>
/// <para>What: the printed numbers as intervals of true values, tightened by the mass balance until nothing moves. The
/// kind is <c>bounds</c>: no value inside is likelier than another.</para>
/// <para>Source: <see cref="UsLabelRounding"/>, <see cref="EuLabelRounding"/>, <see cref="MassBalance"/>.</para>
/// <para>Valid for: panels whose maker rounded by the rules, and whose carbohydrate is by difference.</para>
/// <para>Accuracy: in <see cref="LabelMode.Rounding"/> the truth is inside; a packet may lie outside by as much as
/// <see cref="LabelMode.Legal"/> allows.</para>
/// <para>Notes: an impossible panel is reported, never mended: its bounds are those of each line by itself.</para>
/// </remarks>
public sealed record LabelBounds
{
    private readonly Interval[] _parts;

    private LabelBounds(PrintedPanel panel, LabelMode mode, IReadOnlyList<LabelContradiction> contradictions, Interval[] parts)
    {
        _parts = parts;
        (Style, Mode, Contradictions) = (panel.Style, mode, contradictions);
        Protein = parts[(int)MassPart.Protein];
        Fat = parts[(int)MassPart.Fat];
        SaturatedFat = parts[(int)MassPart.SaturatedFat];
        Carbohydrate = parts[(int)MassPart.Carbohydrate];
        AvailableCarbohydrate = parts[(int)MassPart.AvailableCarbohydrate];
        Fibre = parts[(int)MassPart.Fibre];
        Sugars = parts[(int)MassPart.Sugars];
        AddedSugars = parts[(int)MassPart.AddedSugars];
        StarchAndOther = parts[(int)MassPart.StarchAndOther];
        Starch = parts[(int)MassPart.Starch];
        Remainder = parts[(int)MassPart.Remainder];
        SodiumMilligrams = parts[(int)MassPart.Sodium].Scale(1000);
        PotassiumMilligrams = parts[(int)MassPart.Potassium].Scale(1000);
        PolyolsAreDeclared = panel.PolyolsGrams.IsPrinted;
        Polyols = PolyolsAreDeclared
            ? parts[(int)MassPart.Polyols]
            : new(0, StarchAndOther.High, false, StarchAndOther.HighIsOpen);
        Cautions = LabelCautions.For(panel, mode, contradictions.Count == 0 ? parts : null);
    }

    /// <summary>Whose rules the panel follows.</summary>
    public PanelStyle Style { get; }

    /// <summary>How far the numbers were trusted.</summary>
    public LabelMode Mode { get; }

    /// <summary>Protein.</summary>
    public Interval Protein { get; }

    /// <summary>Fat.</summary>
    public Interval Fat { get; }

    /// <summary>Saturated fat, a part of the fat.</summary>
    public Interval SaturatedFat { get; }

    /// <summary>Carbohydrate by difference: with fibre and sugar alcohols, whatever the style.</summary>
    public Interval Carbohydrate { get; }

    /// <summary>Carbohydrate without fibre.</summary>
    public Interval AvailableCarbohydrate { get; }

    /// <summary>Dietary fibre.</summary>
    public Interval Fibre { get; }

    /// <summary>Total sugars.</summary>
    public Interval Sugars { get; }

    /// <summary>Added sugars, a part of the sugars.</summary>
    public Interval AddedSugars { get; }

    /// <summary>Sugar alcohols: as declared; undeclared ones are a part of <see cref="StarchAndOther"/> and no more than that.</summary>
    public Interval Polyols { get; }

    /// <summary>Whether the panel has a line for sugar alcohols.</summary>
    public bool PolyolsAreDeclared { get; }

    /// <summary>Carbohydrate less fibre, sugars and declared sugar alcohols: starch, dextrins, acids and what else counts as carbohydrate.</summary>
    public Interval StarchAndOther { get; }

    /// <summary>Starch: as declared, or anything up to <see cref="StarchAndOther"/>.</summary>
    public Interval Starch { get; }

    /// <summary>What is left: moisture and ash, and alcohol if there is any.</summary>
    public Interval Remainder { get; }

    /// <summary>Sodium, mg per 100 g.</summary>
    public Interval SodiumMilligrams { get; }

    /// <summary>Potassium, mg per 100 g.</summary>
    public Interval PotassiumMilligrams { get; }

    /// <summary>Lines that cannot all be right; empty for a possible panel.</summary>
    public IReadOnlyList<LabelContradiction> Contradictions { get; }

    /// <summary>What is odd but possible, or says little.</summary>
    public IReadOnlyList<LabelCaution> Cautions { get; }

    /// <summary>Whether some composition prints as this panel.</summary>
    public bool IsPossible => Contradictions.Count == 0;

    /// <summary>The possible composition nearest to what is wished of each line, g per 100 g; the first wish goes first.</summary>
    /// <param name="wishes">Lines that say something about the mass, and g per 100 g (of sodium and salt, g of sodium; of potassium, g).</param>
    /// <exception cref="InvalidOperationException">The panel is impossible.</exception>
    public LabelPoint PointNear(IEnumerable<(LabelLine Line, double Wish)> wishes)
    {
        MustBePossible();
        return LabelPolytope.Near(_parts, wishes.Select(wish => (PanelReading.Part(Style, wish.Line), wish.Wish)));
    }

    /// <summary>The extreme compositions: corners of all that keeps to the bounds and to the mass balance.</summary>
    /// <exception cref="InvalidOperationException">The panel is impossible.</exception>
    public IReadOnlyList<LabelPoint> Corners()
    {
        MustBePossible();
        return LabelPolytope.Corners(_parts);
    }

    private void MustBePossible()
    {
        if (!IsPossible)
        {
            throw new InvalidOperationException("No composition prints as this panel.");
        }
    }

    /// <summary>Reads a panel.</summary>
    public static LabelBounds From(PrintedPanel panel, LabelMode mode = LabelMode.Rounding)
    {
        List<LabelContradiction> contradictions = LabelConflicts.OutOfRange(panel);
        if (contradictions.Any(found => found.Lines.Contains(LabelLine.Serving)))
        {
            return new(panel, mode, contradictions, MassBalance.Unknown());
        }

        contradictions.AddRange(LabelConflicts.Find(panel, mode));
        Interval[] parts = PanelReading.Parts(panel, PanelReading.ReadableMassLines(panel), mode);
        if (contradictions.Count == 0)
        {
            MassBalance.TryTighten(parts);
        }

        return new(panel, mode, contradictions, parts);
    }
}
