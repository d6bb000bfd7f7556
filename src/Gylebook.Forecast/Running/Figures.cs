using Gylebook.Forecast.Stages;
using Gylebook.Forecast.State;
using Gylebook.Science.Boiling;
using Gylebook.Science.Fermenting;
using Gylebook.Science.Liquids;

namespace Gylebook.Forecast.Running;

/// <summary>The readings of a run, taken at their stages: one row a portion, one column a <see cref="Figure"/>.</summary>
public readonly ref struct Figures
{
    /// <summary>How many figures a portion has.</summary>
    public const int Count = (int)Figure.OtherBitterness + 1;

    private readonly Span<double> _values;

    /// <summary>Readings into a buffer of portions times <see cref="Count"/>.</summary>
    public Figures(Span<double> values) => _values = values;

    /// <summary>One reading of one portion.</summary>
    public ref double this[int portion, Figure figure] => ref _values[(portion * Count) + (int)figure];

    /// <summary>Grain and liquor together, mashed.</summary>
    internal void AtMash(int portion, in Wort mash, ReadOnlySpan<double> draw) =>
        this[portion, Figure.MashLitresWithSolids] = mash.Litres + Sludge.SolidLitres(mash, draw);

    /// <summary>Wort off its grain, or off the grain rinsed: what the grist gave so far.</summary>
    internal void AtRunOff(int portion, in Wort wort, double gristKilograms) =>
        this[portion, Figure.MashYield] = gristKilograms > 0 ? 100 * (wort.ExtractMass - wort.LiquorExtractMass) / gristKilograms : 0;

    /// <summary>Before the boil.</summary>
    internal void AtCopperUp(int portion, in Wort wort)
    {
        double gravity = wort.Gravity;
        this[portion, Figure.CopperUpLitres] = wort.LitresAt(gravity);
        this[portion, Figure.CopperUpGravity] = gravity;
    }

    /// <summary>Flame off.</summary>
    internal void AtKnockOut(int portion, in Wort wort)
    {
        double gravity = wort.Gravity;
        this[portion, Figure.KnockOutLitres] = wort.LitresAt(gravity);
        this[portion, Figure.KnockOutGravity] = gravity;
    }

    /// <summary>In the fermenter.</summary>
    internal void AtCast(int portion, in Wort wort)
    {
        double gravity = wort.Gravity;
        this[portion, Figure.CastLitres] = wort.LitresAt(gravity);
        this[portion, Figure.CastGravity] = gravity;
    }

    /// <summary>Fermentation over.</summary>
    internal void AtEndOfFermentation(int portion, in Portion state, ReadOnlySpan<double> draw)
    {
        double original = state.Unfermented.RealExtractPlato;
        double final = state.Wort.Gravity;
        this[portion, Figure.OriginalGravity] = state.Unfermented.Gravity;
        this[portion, Figure.FinalGravity] = final;
        if (original > 0)
        {
            this[portion, Figure.ApparentAttenuation] = 100 * (original - SucroseSolution.PlatoAt(final)) / original;
            this[portion, Figure.RealAttenuation] = 100 * (original - state.Wort.RealExtractPlato) / original;
        }

        this[portion, Figure.FermenterLitresWithSolids] = state.Wort.LitresAt(final) + Sludge.SolidLitres(state.Wort, draw);
    }

    /// <summary>Clear beer, off so many litres of sludge.</summary>
    internal void AtRack(int portion, in Wort beer, double sludgeLitres)
    {
        this[portion, Figure.SludgeLitres] = sludgeLitres;
        this[portion, Figure.AlcoholAtRacking] = beer.AlcoholByVolumePercent;
    }

    /// <summary>Filled, with sugar in it for so many volumes of gas.</summary>
    internal void AtPackage(int portion, in Wort beer, double refermentableVolumes)
    {
        this[portion, Figure.PackagedLitres] = beer.Litres;
        this[portion, Figure.RefermentableVolumes] = refermentableVolumes;
    }

    /// <summary>As served.</summary>
    internal void AtPour(int portion, in Wort beer, BitternessModel shown)
    {
        double gravity = beer.Gravity;
        double litres = beer.LitresAt(gravity);
        if (litres <= 0)
        {
            return;
        }

        double alcohol = beer.AlcoholByMassPercent;
        double extract = Math.Max(BeerEnergy.UsualAshGramsPer100Grams, beer.EdibleExtractPlato);
        this[portion, Figure.AlcoholByVolume] = 100 * beer[Component.Ethanol] / Wort.PureEthanolKilogramsPerLitre / litres;
        bool table = shown == BitternessModel.TimeGravity;
        this[portion, Figure.Bitterness] = beer[table ? Component.Bitterness : Component.IsoAlphaAcid] / litres;
        this[portion, Figure.OtherBitterness] = beer[table ? Component.IsoAlphaAcid : Component.Bitterness] / litres;
        this[portion, Figure.Colour] = WortColour.SrmOfAbsorbance(beer[Component.Colour] / litres);
        this[portion, Figure.Energy] = BeerEnergy.KilocaloriesPer100Millilitres(alcohol, extract, gravity);
        this[portion, Figure.Carbohydrate] = BeerEnergy.CarbohydrateGramsPer100Millilitres(extract, gravity);
        this[portion, Figure.Sodium] = beer[Component.Sodium] / litres;
        this[portion, Figure.CarbonationVolumes] =
            beer[Component.CarbonDioxide] * 1000 / Science.Quantities.Carbonation.GramsPerLitreInOneVolume / litres;
    }

    /// <summary>Copies what was read before a split, so that each portion carries its own history.</summary>
    internal void CopyRow(int from, int to) =>
        _values.Slice(from * Count, Count).CopyTo(_values.Slice(to * Count, Count));
}
