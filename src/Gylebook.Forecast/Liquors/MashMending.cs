using Gylebook.Engine.Readouts;
using Gylebook.Recipes;
using Gylebook.Recipes.Liquors;
using Gylebook.Science.Mashing;
using Gylebook.Science.Quantities;
using Gylebook.Science.Water;

namespace Gylebook.Forecast.Liquors;

/// <summary>What a meter reading of the mash teaches, and what to put in now.</summary>
/// <param name="meter">What was read.</param>
/// <param name="measured">The mash that was measured: the plan's salts, and the acid that was in by then.</param>
internal sealed class MashMending(MeterReading meter, MashPhMix measured)
{
    /// <summary>Closer than this to the pH wanted nothing is to be done: a hand-held meter is good for 0.05 (common practice, no source).</summary>
    private const double CloseEnough = 0.02;

    /// <summary>A malt whose distilled-water pH would be outside this was not what moved the mash.</summary>
    private const double LowestMalt = 4;
    private const double HighestMalt = 7;

    private readonly MashPhReading _reading = MashPhReading.Of(measured, meter.Ph, meter.Sample.Value);

    /// <summary>What the reading says of the grist, for the band of another mash of it.</summary>
    public MashPhReading Reading => _reading;

    private double PhAt20C => MashPhTemperature.ToRoom(meter.Ph, meter.Sample.Value);

    /// <summary>What it teaches.</summary>
    /// <param name="lines">The grist, a line for each malt of the mash.</param>
    /// <param name="findings">Takes what is doubtful.</param>
    public MashReadingReport Report(IReadOnlyList<GristLine> lines, List<Finding> findings)
    {
        findings.AddRange(_reading.Diagnose().Select(diagnosis => LiquorFinding.Of(diagnosis, "mashReading.ph")));
        double[] shifts = [.. _reading.Guesses.Select(guess => guess.Offset)];
        return new MashReadingReport(
            meter, PhAt20C, MashPh.Predict(measured),
            new Band(shifts.Min(), shifts[0], shifts.Max(), "pH", BandKind.Bounds), Learned(lines));
    }

    /// <summary>What to add; null when the mash is where it is wanted, or nothing at hand would bring it there.</summary>
    /// <param name="wanted">The pH wanted, at 20 °C.</param>
    /// <param name="acid">The acid at hand, and how much of it there still is.</param>
    /// <param name="alkali">The alkaline salt at hand, and how many grams may still go in.</param>
    public MashMend? Find(double wanted, (OfferedAcid? Offer, double Most) acid, (OfferedSalt? Offer, double Most) alkali)
    {
        if (PhAt20C - wanted > CloseEnough && acid.Offer is { } sour)
        {
            double[] units = [.. _reading.Guesses.Select(guess => Math.Max(0, sour.Acid.UnitsFor(MashPh.AcidToReach(measured, wanted, guess), wanted)))];
            double dose = DoseFinder.Rounded(Math.Min(units[0], acid.Most), acid.Most);
            MashPhMix mended = measured with { Acids = [.. measured.Acids, new MashPhAcid(sour.Acid, dose)] };
            return Mend(sour, null, units, dose, mended);
        }

        if (wanted - PhAt20C > CloseEnough && alkali.Offer is { } lifting)
        {
            double[] grams = [.. _reading.Guesses.Select(guess => DoseFinder.AlkaliGrams(
                amount => MashPh.Predict(Lifted(lifting, amount), guess), wanted, 0, alkali.Most))];
            double dose = DoseFinder.Rounded(grams[0], alkali.Most);
            return Mend(null, lifting.Salt, grams, dose, Lifted(lifting, dose));
        }

        return null;
    }

    private MashPhMix Lifted(OfferedSalt offer, double grams) =>
        measured with { Liquor = measured.Liquor.With(offer.Salt, Mass.FromGrams(grams)) };

    private MashMend Mend(OfferedAcid? acid, BrewingSalt? salt, double[] amounts, double dose, MashPhMix mended)
    {
        MashPhBand band = MashPhBand.Of(mended, _reading);
        string unit = acid is { Acid.Unit: DoseUnit.Millilitre } ? "mL" : "g";
        return new MashMend(
            acid, salt, new Band(amounts.Min(), amounts[0], amounts.Max(), unit, BandKind.Bounds), dose,
            new Band(band.Low, band.Likely, band.High, Words.PhAt20C, BandKind.Bounds));
    }

    /// <summary>Laid to the base malts, which weigh most; where there are none, to every malt of the table.</summary>
    private List<LearnedMalt> Learned(IReadOnlyList<GristLine> lines)
    {
        HashSet<int> chosen = [.. Enumerable.Range(0, lines.Count).Where(at => lines[at].Malt?.Family == MaltFamily.Base)];
        if (chosen.Count == 0)
        {
            chosen = [.. Enumerable.Range(0, lines.Count).Where(at => lines[at].Malt is not null)];
        }

        if (chosen.Count == 0)
        {
            return [];
        }

        (double low, double likely, double high) = MashPhLearning.ShiftOf(measured, chosen, _reading, PhAt20C);
        List<LearnedMalt> learned = [.. chosen.Order().Select(at => lines[at]).DistinctBy(line => line.Malt!.Id).Select(line =>
        {
            double before = line.Titration!.DistilledPh;
            return new LearnedMalt(line.Malt!, new Band(before + low, before + likely, before + high, Words.PhAt20C, BandKind.Bounds), line.Titration.Buffer);
        })];
        return learned.TrueForAll(malt => malt.DistilledPh.Likely is > LowestMalt and < HighestMalt) ? learned : [];
    }
}
