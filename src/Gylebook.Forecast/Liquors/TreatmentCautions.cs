using Gylebook.Engine.State;
using System.Globalization;
using Gylebook.Engine.Readouts;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Liquors;

/// <summary>Hazards of treating liquor where they bite, and how far its numbers go.</summary>
public static class TreatmentCautions
{
    internal static IReadOnlyList<Caution> Of(WaterPlan plan, LiquorNeed need, TreatedMash mash, TreatedLiquor sparge, TreatedLiquor kettle) =>
    [
        .. plan.Sources.Where(source => source.Boiled).Select(source => new Caution(
            "scald.boiledLiquor", Stage.Strike, $"A full kettle on the boil scalds: let the water ({source.Name}) cool and settle before you draw it off its chalk.", Words.Trade)),
        .. AcidIn(Stage.Mash, mash.Liquor), .. AcidIn(Stage.Rinse, sparge), .. AcidIn(Stage.CopperUp, kettle), .. WortIn(kettle),
        .. SaltsOf(plan, mash.Liquor, sparge, kettle),
        new("scald.liquor", Stage.Strike, "Hot liquor scalds. Put salts and acid in while it is cold, and stir. Keep children and animals away, wear boots, and move it in small amounts.", Words.Trade),
        .. MendIn(mash.Mend),
        .. Models(need, mash.Ph, mash.Reading),
    ];

    /// <summary>The caution of an acid, at the place it goes in.</summary>
    public static Caution ForAcid(Acid acid, Place place) => new(
        "acid.handle", place, $"{Words.Sentence(acid.Name)}: {acid.Caution} Food grade only; local law says which acids may go into beer.", "safety data sheets' common advice");

    private static IEnumerable<Caution> AcidIn(Place place, TreatedLiquor liquor) =>
        liquor.Acids.Select(dose => ForAcid(dose.Acid.Acid.Acid, place));

    private static IEnumerable<Caution> WortIn(TreatedLiquor kettle) => kettle.Acids.Count == 0 ? [] :
    [
        new("wort.measure", Stage.CopperUp, "Wort's buffer in print runs from 31 to 36 mEq for each kilogram of malt and pH, and the boil lowers the pH by itself: put in two thirds before the boil, and measure a cooled sample. Never pour acid into wort on the boil: it spits.", "docs/science/mash-ph.md; common practice, no source"),
    ];

    private static IEnumerable<Caution> SaltsOf(WaterPlan plan, params TreatedLiquor[] liquors)
    {
        HashSet<string> used = [.. liquors.SelectMany(liquor => liquor.Salts).Select(dose => dose.Salt.Id)];
        return plan.Salts.Where(offer => used.Contains(offer.Salt.Id) && offer.Salt.Caution.Length > 0)
            .Select(offer => new Caution("salt.handle", Stage.Mash, $"{Words.Sentence(offer.Salt.Name)}: {offer.Salt.Caution}", "safety data sheets' common advice"));
    }

    /// <summary>A mend may bring an acid or an alkaline salt that the plan itself had no need of.</summary>
    private static IEnumerable<Caution> MendIn(MashMend? mend)
    {
        if (mend is null)
        {
            yield break;
        }

        if (mend.Acid is { } acid)
        {
            yield return ForAcid(acid.Acid.Acid, Stage.Mash);
        }

        if (mend.Salt is { Caution.Length: > 0 } salt)
        {
            yield return new("salt.handle", Stage.Mash, $"{Words.Sentence(salt.Name)}: {salt.Caution}", "safety data sheets' common advice");
        }

        yield return new("scald.mash", Stage.Mash, "The mash is hot and scalds: add two thirds, diluted in cold water, stir, wait ten minutes and measure again.", Words.Trade);
    }

    private static IEnumerable<Caution> Models(LiquorNeed need, Band? ph, MashReadingReport? reading)
    {
        double grist = need.Grist.Sum(line => line.Amount.Kilograms);
        List<GristLine> unknown = [.. need.Grist.Where(line => line.Titration is null && line.Amount.Kilograms > 0)];
        if (ph is not null && unknown.Count > 0)
        {
            string share = (100 * unknown.Sum(line => line.Amount.Kilograms) / grist).ToString("0", CultureInfo.InvariantCulture);
            string names = string.Join(", ", unknown.Select(line => line.Name));
            yield return new("mashPh.unmeasured", Stage.Mash, $"{names}: nobody has published an acidity for it, so {share} % of the grist is left out of the pH. Measure the mash.", "no published titration");
        }

        if (reading is not null)
        {
            yield return new("mashPh.learned", Stage.Mash, "One reading cannot tell malts apart, nor a malt's own pH from its buffer: what it teaches is laid to the base malts, and belongs to the buffer beside it. The ends are those of the printed buffers, 21 and 64 mEq/(kg·pH); the meter's own error comes on top.", "docs/science/mash-ph.md");
        }
        else if (ph is not null)
        {
            yield return new("mashPh.band", Stage.Mash, "The band is the answer at the ends of the printed buffers, 21 and 64 mEq/(kg·pH); malts' own pH may be 0.1 or 0.2 off besides. A cooled sample on a calibrated meter beats it; in the hot mash a meter reads about 0.35 lower.", "docs/science/mash-ph.md; Briggs et al. 2004, ch. 4");
        }
    }
}
