namespace Gylebook.Science.Water;

/// <summary>Liquor boiled, left to settle and drawn off its chalk.</summary>
/// <remarks>
/// <para>Symbols: Ca and alkalinity fall together, 1 mEq with 1 mEq, as CaCO3 settles.</para>
/// <para>Source: stoichiometry of Ca(HCO3)2 → CaCO3 + CO2 + H2O; the end by <see cref="CalciteEquilibrium"/>.</para>
/// <para>Valid for: liquor whose alkalinity is matched by calcium. Magnesium stays in solution.</para>
/// <para>Accuracy: the end is what a complete boil and rest would leave. Real boils of half an hour leave more
/// (common practice, no source): titrate the result and use <see cref="ToAlkalinity"/>.</para>
/// <para>Notes: a full kettle on the boil scalds, and the chalk is a fine mud: let it settle before you draw off.</para>
/// </remarks>
public static class Decarbonation
{
    /// <summary>The water once all chalk that can fall out, at 25 °C in air, has done so.</summary>
    public static IonProfile Boiled(IonProfile water)
    {
        CalciteRest rest = CalciteEquilibrium.WithChalk(water);
        return rest.ChalkMillimoles < 0 ? ToAlkalinity(water, rest.AlkalinityMilliequivalents) : water;
    }

    /// <summary>The water once its alkalinity has fallen to a measured mEq/L; calcium permitting.</summary>
    /// <remarks>It never falls further than the calcium goes, and never rises.</remarks>
    public static IonProfile ToAlkalinity(IonProfile water, double alkalinityMilliequivalents)
    {
        double wanted = water.AlkalinityMilliequivalents - Allowed.Alkalinity.Check(alkalinityMilliequivalents);
        double lost = Math.Clamp(wanted, 0, water.Milliequivalents(Ion.Calcium));
        return water
            .With(Ion.Calcium, water.Calcium - (lost * Ion.Calcium.EquivalentWeight()))
            .With(Ion.Bicarbonate, water.Bicarbonate - (lost * Ion.Bicarbonate.EquivalentWeight()));
    }
}
