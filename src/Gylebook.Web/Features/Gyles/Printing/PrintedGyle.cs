using Gylebook.Forecast;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Days;
using Gylebook.Gyles.Plans;
using Gylebook.Pictures;
using Gylebook.Pictures.Sheets;
using Gylebook.Recipes.Interchange;
using Gylebook.Science.Quantities;

namespace Gylebook.Web.Features.Gyles.Printing;

/// <summary>A gyle's frozen plan as its brew-day sheet. Only the answers for a point off are today's engine's.</summary>
/// <param name="gyle">The gyle.</param>
/// <param name="shown">How the reader sees numbers.</param>
internal sealed class PrintedGyle(OpenGyle gyle, Shown shown)
{
    private readonly FrozenForecast _frozen = FrozenForecast.Of(gyle.Plan);

    /// <summary>The sheet.</summary>
    public static BrewSheet Of(OpenGyle gyle, Shown shown) => new PrintedGyle(gyle, shown).Sheet();

    private BrewSheet Sheet()
    {
        BrewSheetMend[] mends = [.. PointMend.Of(gyle.Plan).Select(Told)];
        string[] atSteps = [.. gyle.Plan.Steps.SelectMany(step => step.Cautions).Select(caution => caution.Message)];
        return new BrewSheet
        {
            Name = gyle.Plan.Name,
            Under = $"Brew-day sheet{(_frozen.Kit.Length > 0 ? $" · for the kit {_frozen.Kit}" : "")} · plan frozen {gyle.Plan.Frozen.UtcDateTime.ToString("d MMMM yyyy", System.Globalization.CultureInfo.InvariantCulture)}",
            Allergens = _frozen.Allergens,
            Steps = [.. gyle.Plan.Steps.Select(Step)],
            Mends = mends,
            MendsAside = mends.Length == 0 ? "" : "By today's engine, for litres as planned and a checked hydrometer; write in what you read, and it answers for that.",
            Later = [.. GyleDays.Of(gyle.Plan, gyle.Start, gyle.Pitched).Where(day => day.AfterPitch is not null).Select(Later)],
            LaterCautions = [.. _frozen.Cautions.Where(caution => (caution.IsWarning || caution.IsGrave) && !atSteps.Contains(caution.Message)).Select(Caution)],
            Notes = RecipeFile.Read(gyle.Plan.Recipe).Value?.Notes?.Trim() ?? "",
        };
    }

    private BrewSheetStep Step(BrewStep step) => new(
        ToldText.Of(step.Title, shown.Units), ToldText.Of(step.Say, shown.Units),
        [.. step.Items.Select(item => new BrewSheetItem(item.What, AmountOf(item)))],
        [.. step.Readings.Select(reading => Blank(step, reading))],
        [.. step.Cautions.Select(caution => Caution(new(caution.Code, caution.Severity, "", caution.Message)))]);

    /// <summary>What was weighed in a recipe's unit, in the reader's; doses of salt and acid are grams and millilitres everywhere.</summary>
    private string AmountOf(StepItem item) => ItemKey.IsLine(item.Key) && UnitTable.TryParse(item.Amount, out Entered<Mass> mass, out _)
        ? shown.Kilograms(mass.Value.Kilograms) : ToldText.Of(item.Amount, shown.Units);

    private BrewSheetBlank Blank(BrewStep step, StepReading reading) => reading.What switch
    {
        "gravity" => new("gravity", AimOf(step, "SG") ?? Ends($"stage.{step.Stage}.gravity", shown.Gravity)),
        "volume" => new("volume", AimOf(step, "L") ?? AimOf(step, "L at 20 °C") ?? Ends($"stage.{step.Stage}.litresHot", shown.Litres)),
        "ph" => new("pH, cooled", _frozen.End("mashPh", "low") is { } low && _frozen.End("mashPh", "high") is { } high ? $"{shown.Number(low, 2)} to {shown.Number(high, 2)}" : ""),
        _ => new("temperature", Ends($"stage.{step.Stage}.celsius", shown.Celsius)),
    };

    private string? AimOf(BrewStep step, string unit) => step.Aims.FirstOrDefault(aim => aim.Unit == unit) is { } aim ? AimText.Ends(aim, shown) : null;

    private string Ends(string id, Func<double, string> told) => _frozen.Ends(id) is not (double low, double high) ? ""
        : told(low) == told(high) ? told(low) : $"{told(low)} to {told(high)}";

    private BrewSheetCaution Caution(FrozenCaution caution) => new(
        new SheetCaution(Words.Sentence(caution.Mark ?? "mind"), ToldText.Of(caution.Message, shown.Units)), caution.IsGrave);

    private BrewSheetMend Told(PointMend mend) => new(
        $"{Words.Sentence(ReadingsFile.Word(mend.At))} {shown.Gravity(mend.Gravity)}, a point {(mend.IsLow ? "low" : "high")}",
        mend.Ways.Count == 0 ? "let it be: nothing lands nearer to the plan."
            : $"{string.Join("; or ", mend.Ways.Select(way => ToldText.Of(way.Effort.Length > 0 ? $"{way.Words} ({way.Effort})" : way.Words, shown.Units)))}.");

    private BrewSheetMend Later(GyleDay day) => new(
        Invariant($"Day {day.AfterPitch:0.##}"), ToldText.Of(day.Sentence, shown.Units));
}
