using Gylebook.Engine.Readouts;
using Gylebook.Recipes;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Liquors;

/// <summary>Salts for the mash, then acid or an alkaline salt for its pH.</summary>
/// <remarks>
/// A strong acid leaves an ion that the salts were asked for too, and a salt's calcium moves the pH: the two are found in
/// turn until neither moves. Alkaline salts are kept for the pH when one is wanted.
/// </remarks>
internal sealed class MashTreatment(WaterPlan plan, SourceLiquor source, LiquorNeed need, List<Finding> findings)
{
    private const int MostRounds = 12;
    private const double CloseEnough = 0.02;

    /// <summary>A milligram of grain moves no pH.</summary>
    private const double LeastGrain = 1e-6;

    private readonly List<GristLine> _lines = [.. need.Grist.Where(line => line.Titration is not null && line.Amount.Kilograms > LeastGrain)];

    private List<MashPhMalt> Malts => [.. _lines.Select(line =>
        new MashPhMalt(line.Name, line.Amount, line.Titration!.DistilledPh, line.Titration.Buffer, line.Titration.Curvature))];

    private readonly OfferedAcid? _acid = plan.Acids.Count > 0 ? plan.Acids[0] : null;

    private IEnumerable<OfferedSalt> Offers => plan.Salts.Where(offer => offer.Into is LiquorPlace.Liquor or LiquorPlace.Mash);

    private IEnumerable<OfferedSalt> AlkalineOffers => Offers.Where(offer => offer.Salt.AlkalinityPerMole > 0);

    private bool SettlesPh => plan.MashPh is not null && _lines.Count > 0;

    /// <summary>The treated liquor, and the pH of the mash in it with what a reading says.</summary>
    public TreatedMash Treat()
    {
        List<OfferedSalt> alkaline = SettlesPh ? [.. AlkalineOffers] : [];
        Correction correction = new(0, null, 0);
        for (int round = 1; ; round++)
        {
            // Until the anion of the acid and what the salts make of it agree.
            IonProfile seen = WithAnion(source.Ions, correction.Acid) + AlkaliIons(correction);
            SaltSolution solution = DoseFinder.Find(plan, seen, need.StrikeLitres, Offers.Except(alkaline), mayDilute: true);
            MashPhLiquor salted = Salted(solution);
            Correction next = Correct(salted, alkaline);
            bool settled = next == correction;
            correction = next;
            if (settled || round == MostRounds)
            {
                return Settled(solution, salted, correction);
            }
        }
    }

    /// <summary>What brings the pH where it is wanted: acid, or grams of one alkaline salt.</summary>
    private readonly record struct Correction(double Acid, OfferedSalt? Alkali, double Grams);

    private TreatedMash Settled(SaltSolution solution, MashPhLiquor salted, Correction correction)
    {
        findings.AddRange(DoseFinder.Findings(solution, "mash"));
        List<SaltDose> salts = [.. DoseFinder.Doses(solution, need.StrikeLitres)];
        if (correction.Alkali is { } alkali && correction.Grams > 0)
        {
            salts.Add(new SaltDose(alkali.Salt, correction.Grams));
        }

        IonProfile unsoured = source.Diluted(solution.ShareDiluted).Ions;
        foreach (SaltDose dose in salts)
        {
            unsoured += dose.Salt.Added(Mass.FromGrams(dose.Grams), VolumeAt20C.FromLitres(need.StrikeLitres));
        }

        IReadOnlyList<AcidDose> acids = correction.Acid > 0 ? [new AcidDose(_acid!, correction.Acid)] : [];
        (Band? band, MashReadingReport? reading, MashMend? mend) = PhOf(salted, correction);
        TreatedLiquor liquor = new(
            need.StrikeLitres, solution.ShareDiluted, salts, acids, unsoured,
            Soured(WithAnion(unsoured, correction.Acid), correction.Acid, band?.Likely), null)
        { Misses = solution.Misses };
        return new TreatedMash(liquor, band, reading, mend);
    }

    private (Band? Ph, MashReadingReport? Reading, MashMend? Mend) PhOf(MashPhLiquor salted, Correction correction)
    {
        if (_lines.Count == 0)
        {
            return default;
        }

        MashPhMix mix = Mix(salted, correction);
        findings.AddRange(MashPhCheck.Diagnose(mix).Select(diagnosis => LiquorFinding.Of(diagnosis, "mash")));
        if (plan.MashReading is not { } meter)
        {
            Band forecast = BandOf(MashPhBand.Of(mix));
            TellIfMissed(forecast.Likely);
            return (forecast, null, null);
        }

        Correction then = correction with { Acid = meter.AcidUnits ?? correction.Acid };
        MashMending mending = new(meter, Mix(salted, then));
        MashReadingReport lesson = mending.Report(_lines, findings);
        MashMend? mend = plan.MashPh is double wanted ? mending.Find(wanted, (_acid, Math.Max(0, (_acid?.MostMillilitres ?? double.MaxValue) - then.Acid)), AlkaliLeft(then)) : null;
        TellIfMissed(mend?.Ph.Likely ?? lesson.PhAt20C);
        return (BandOf(MashPhBand.Of(mix, mending.Reading)), lesson, mend);
    }

    private static Band BandOf(MashPhBand band) => new(band.Low, band.Likely, band.High, Words.PhAt20C, BandKind.Bounds);

    private (OfferedSalt? Offer, double Most) AlkaliLeft(Correction then)
    {
        OfferedSalt? offer = then.Alkali ?? AlkalineOffers.FirstOrDefault();
        return offer is null ? default
            : (offer, Math.Max(0, (DoseFinder.Offer(offer, source.Ions).MostGramsPerLitre * need.StrikeLitres) - then.Grams));
    }

    private void TellIfMissed(double ph)
    {
        if (plan.MashPh is double wanted && Math.Abs(ph - wanted) > CloseEnough)
        {
            findings.Add(LiquorFinding.PhNotReached("mash", ph, wanted, ph > wanted ? "acid" : "an alkaline salt"));
        }
    }

    private MashPhLiquor Salted(SaltSolution solution)
    {
        SourceLiquor diluted = source.Diluted(solution.ShareDiluted);
        MashPhLiquor liquor = MashPhLiquor.Of(VolumeAt20C.FromLitres(need.StrikeLitres), diluted.Ions, diluted.Ph);
        foreach (SaltDose dose in DoseFinder.Doses(solution, need.StrikeLitres))
        {
            liquor = liquor.With(dose.Salt, Mass.FromGrams(dose.Grams));
        }

        foreach ((BrewingSalt salt, Mass amount) in need.Salts)
        {
            liquor = liquor.With(salt, amount);
        }

        return liquor;
    }

    private MashPhMix Mix(MashPhLiquor salted, Correction correction)
    {
        MashPhLiquor liquor = correction.Alkali is { } alkali ? salted.With(alkali.Salt, Mass.FromGrams(correction.Grams)) : salted;
        List<MashPhAcid> acids = [.. need.Acids];
        if (_acid is not null && correction.Acid > 0)
        {
            acids.Add(new MashPhAcid(_acid.Acid, correction.Acid));
        }

        return new MashPhMix(liquor, Malts, acids);
    }

    private Correction Correct(MashPhLiquor salted, List<OfferedSalt> alkaline)
    {
        if (!SettlesPh)
        {
            return default;
        }

        double wanted = plan.MashPh!.Value;
        MashPhMix plain = Mix(salted, default);
        double ph = MashPh.Predict(plain);
        if (ph > wanted && _acid is not null)
        {
            double units = Math.Min(MashPh.UnitsToReach(plain, wanted, _acid.Acid), _acid.MostMillilitres ?? double.MaxValue);
            return new Correction(DoseFinder.Rounded(units, _acid.MostMillilitres ?? double.MaxValue), null, 0);
        }

        return ph < wanted && alkaline.Count > 0 ? new Correction(0, alkaline[0], Alkali(salted, alkaline[0], wanted)) : default;
    }

    private double Alkali(MashPhLiquor salted, OfferedSalt offer, double wanted)
    {
        SaltOffer limits = DoseFinder.Offer(offer, source.Ions);
        double most = limits.MostGramsPerLitre * need.StrikeLitres;
        double found = DoseFinder.AlkaliGrams(
            grams => MashPh.Predict(Mix(salted, new Correction(0, offer, grams))), wanted, limits.LeastGramsPerLitre * need.StrikeLitres, most);
        return DoseFinder.Rounded(found, most);
    }

    private IonProfile AlkaliIons(Correction correction) => correction.Alkali is { } alkali
        ? alkali.Salt.Added(Mass.FromGrams(correction.Grams), VolumeAt20C.FromLitres(need.StrikeLitres)) : IonProfile.Distilled;

    private IonProfile WithAnion(IonProfile ions, double units) => _acid is null ? ions
        : DoseFinder.WithAnion(ions, _acid.Acid, units, need.StrikeLitres);

    private IonProfile Soured(IonProfile ions, double units, double? ph) => _acid is null || units <= 0 ? ions
        : ions.With(Ion.Bicarbonate, ions.Bicarbonate
            - (units * _acid.Acid.MilliequivalentsPerUnit(ph ?? plan.MashPh!.Value) / need.StrikeLitres * Ion.Bicarbonate.EquivalentWeight()));
}

/// <summary>What came of the mash.</summary>
/// <param name="Liquor">The treated liquor.</param>
/// <param name="Ph">pH of the mash; null without a grist that has titrations.</param>
/// <param name="Reading">What a meter says of it.</param>
/// <param name="Mend">What to add now.</param>
internal sealed record TreatedMash(TreatedLiquor Liquor, Band? Ph, MashReadingReport? Reading, MashMend? Mend);
