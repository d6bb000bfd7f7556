using Gylebook.Engine.Readouts;
using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Forecast.Ingredients;
using Gylebook.Forecast.Liquors;
using Gylebook.Forecast.Planning;
using Gylebook.Forecast.Report;
using Gylebook.Forecast.Report.Mashing;
using Gylebook.Recipes;
using Gylebook.Recipes.Ingredients;
using Gylebook.Recipes.Kits;

namespace Gylebook.Gyles.BrewDay;

/// <summary>Lays out brew day from a forecast: every step from the cold liquor to clean vessels, in the order in which hands do them.</summary>
/// <param name="planned">The recipe on its kit.</param>
/// <param name="forecast">Its forecast.</param>
public sealed class BrewSteps(BrewPlan planned, BrewForecast forecast)
{
    /// <summary>Key of the step at which yeast goes in.</summary>
    public const string PitchKey = "pitch";

    private readonly List<BrewStep> _steps = [];
    private readonly StepFigures _figures = new(forecast);

    private MashSchedule? Mash => forecast.MashSchedule;

    /// <summary>The steps.</summary>
    public static IReadOnlyList<BrewStep> Of(BrewPlan planned, BrewForecast forecast) => new BrewSteps(planned, forecast).All();

    private List<BrewStep> All()
    {
        AddLiquor();
        AddMash();
        AddCopperUp();
        AddBoil();
        AddKnockOut();
        AddSanitising();
        AddCooling();
        AddPitch();
        AddCleaning();
        return WithCautions();
    }

    private void AddLiquor()
    {
        Add("set-out", Stage.Strike, "Set out", "Weigh out all that goes in, and see that everything is clean. Run the liquor in; keep children and animals away from here on.");
        if (forecast.Water is { } water && Doses("mash", water.Mash) is { Count: > 0 } doses)
        {
            Add("salts", Stage.Strike, "Salts and acid", "Weigh them and stir them into the liquor while it is cold. Acid into water, never water into acid; eyes and hands covered.", items: doses);
        }

        double litres = Mash?.StrikeLitres ?? _figures.Of(StageReadouts.Of(Stage.Strike, 0).Litres) ?? 0;
        string to = Mash is { } mash ? Invariant($" to {mash.StrikeCelsius:0.0} °C") : "";
        Add("heat", Stage.Strike, "Heat", Invariant($"Heat the {litres:0.0} L of liquor{to}."), Mash?.StrikeHeatMinutes);
    }

    private void AddMash()
    {
        if (Mash is not { } mash)
        {
            return;
        }

        PlannedLine[] grain = [.. At(AdditionPoint.Mash)];
        StepItem[] malts = [.. grain.Where(line => line.Food is null).Select(Item)], foods = [.. grain.Where(line => line.Food is not null).Select(Item)];
        StepTrouble[] wrong = StepFigures.OffTemperature(mash, grain.Sum(line => line.Kilograms));
        Add("strike", Stage.Mash, "Strike", Invariant($"Stir the grain into the liquor a little at a time, until no dry lumps are left; it should come to {mash.Rests[0].Celsius:0.#} °C."), items: malts,
            readings: [new("mash", "temperature", "In the middle and at the edge, after stirring.")], wrong: wrong);
        if (foods.Length > 0)
        {
            Add("foods", Stage.Mash, "Foods", "Stir them in, crumbled and without lumps.", items: foods);
        }

        foreach ((int number, MashRest rest) in mash.Rests.Index())
        {
            string way = number > 0 && rest.HeatMinutes is { } heat ? Invariant($"Heat to {rest.Celsius:0.#} °C, about {heat:0} min at full power, stirring; then rest.") : Invariant($"Rest at {rest.Celsius:0.#} °C.");
            bool isLast = number == mash.Rests.Count - 1;
            Add(Invariant($"rest-{number + 1}"), Stage.Mash, Invariant($"Rest {rest.Celsius:0.#} °C"), way, rest.Minutes,
                readings: [.. number == 0 ? [new StepReading("mash", "ph", "Ten minutes in; cool a spoonful to room temperature first.")] : Array.Empty<StepReading>(),
                    .. isLast ? [new StepReading("mash", "gravity", "First wort, before any rinse; cooled and covered.")] : Array.Empty<StepReading>()]);
        }

        string lift = planned.Recipe.Mash!.Method == MashMethod.Tun ? "Run the wort off into the kettle, slowly at first, until it runs clear."
            : _figures.Of(Heat.LiftKilograms) is { } kilograms ? Invariant($"Lift the bag, about {kilograms:0.0} kg wet and hot: a pulley or four hands. Let it drip over the kettle.")
            : "Lift the bag and let it drip over the kettle.";
        Add("lift", Stage.Lift, planned.Recipe.Mash.Method == MashMethod.Tun ? "Run off" : "Lift", lift, wrong: [StepFigures.Stuck(planned.Recipe.Mash.Method)]);
        if (mash.Rinse is { } rinse)
        {
            string at = rinse.Celsius is { } celsius ? Invariant($" at {celsius:0.#} °C") : "";
            Add("sparge", Stage.Rinse, "Sparge", Invariant($"{(rinse.Method == SpargeMethod.Dunk ? "Stir the grain about in" : "Rinse the grain with")} {rinse.Litres:0.0} L of liquor{at}."),
                items: forecast.Water is { } water ? Doses("sparge", water.Sparge) : []);
        }
    }

    private void AddCopperUp()
    {
        StageReadouts its = StageReadouts.Of(Stage.CopperUp, 0);
        Add("copper-up", Stage.CopperUp, "Copper-up", "Stir, and read the kettle before it boils: what it says now can still be mended.", items: [.. At(AdditionPoint.CopperUp).Select(Item)],
            aims: _figures.Aims(("in the kettle, as it stands", its.LitresHot), ("gravity", its.Gravity)), readings: StepFigures.GravityAndVolume("copper-up"),
            wrong: [_figures.TooLittle()]);
        if (Mash is { HasBoil: true, BoilHeatMinutes: { } minutes })
        {
            Add("to-boil", Stage.Boil, "To the boil", Invariant($"Heat to the boil, about {minutes:0} min. Stay with it: it foams just before it boils."), wrong: [StepFigures.FoamsUp]);
        }
    }

    private void AddBoil()
    {
        if (planned.Recipe.Boil is not { } boil)
        {
            return;
        }

        double[] moments = [.. At(AdditionPoint.Boil).Select(line => line.Line.At.Count).Append(boil.Time.Value.Minutes).Distinct().OrderDescending()];
        for (int i = 0; i < moments.Length; i++)
        {
            double left = moments[i], until = i + 1 < moments.Length ? moments[i + 1] : 0;
            StepItem[] items = [.. At(AdditionPoint.Boil).Where(line => line.Line.At.Count == left).Select(Item)];
            string now = i == 0 ? Invariant($"It boils: {left:0.#} min from now to knock-out.") : Invariant($"{left:0.#} min before knock-out.");
            Add(Invariant($"boil-{left:0.##}"), Stage.Boil, Invariant($"Boil {left:0.#} min"), items.Length > 0 ? $"{now} Turn down, then add." : now, left - until, items,
                wrong: items.Length > 0 || i == 0 ? [StepFigures.FoamsUp] : []);
        }
    }

    private void AddKnockOut()
    {
        StageReadouts its = StageReadouts.Of(Stage.KnockOut, 0);
        StepItem[] items = [.. At(AdditionPoint.KnockOut).Select(Item)];
        string foods = At(AdditionPoint.KnockOut).Any(line => line.Food is not null || line.Sugar is not null) ? " Add a little at a time, stirring: it foams, and what sinks burns on." : "";
        Add("knock-out", Stage.KnockOut, "Knock-out", $"Flame off.{foods}", items: items,
            aims: _figures.Aims(("in the kettle, as it stands", its.LitresHot), ("gravity", its.Gravity)), readings: StepFigures.GravityAndVolume("knock-out"));
        if (planned.Recipe.Stand is not { } stand)
        {
            return;
        }

        double[] moments = [.. At(AdditionPoint.Stand).Select(line => line.Line.At.Count).Append(stand.Time.Value.Minutes).Distinct().OrderDescending()];
        for (int i = 0; i < moments.Length; i++)
        {
            double left = moments[i], until = i + 1 < moments.Length ? moments[i + 1] : 0;
            Add(Invariant($"stand-{left:0.##}"), Stage.Stand, Invariant($"Stand {left:0.#} min"), Invariant($"Keep it at {stand.Temperature.Value.Celsius:0.#} °C, covered."), left - until,
                [.. At(AdditionPoint.Stand).Where(line => line.Line.At.Count == left).Select(Item)]);
        }
    }

    /// <summary>A step of its own where the kit knows how long it takes; else it is said where the vessels are cleaned.</summary>
    private void AddSanitising()
    {
        if (planned.Kit.Cleaning?.Sanitiser is { } sanitiser)
        {
            Add("sanitise", Stage.KnockOut, "Sanitise", $"The fermenter, and all that touches cooled wort: clean first, then wet with the sanitiser for {sanitiser.Text}, mixed as its label says. Eyes and hands covered; never mix it with another product.", sanitiser.Value.Minutes);
        }
    }

    private void AddCleaning()
    {
        Cleaning? cleaning = planned.Kit.Cleaning;
        string clean = cleaning?.Cleaner is { } cleaner ? $"leave the cleaner on for {cleaner.Text}, as its label says, and rinse" : "clean for as long as the product's own label says, and rinse";
        string sanitise = cleaning?.Sanitiser is null ? " Before the next use, sanitise for as long as the product's own label says." : "";
        Add("clean", Stage.Cast, "Clean", $"Empty and rinse while it is still wet; {clean}.{sanitise} Never mix cleaners: acid and chlorine together make a poisonous gas. Spent grain and hops are not for dogs.", cleaning?.Cleaner?.Value.Minutes);
    }

    private void AddCooling()
    {
        if (forecast.Chilling is { } chilling)
        {
            string water = chilling.CoolantLitres is { } litres ? Invariant($" It takes about {litres:0} L of water; the first of it scalds.") : "";
            Add("chill", Stage.Chill, "Chill", Invariant($"Cool to {chilling.ToCelsius:0.#} °C{(chilling.IsAlone ? " in a closed vessel that bears the heat" : "")}.{water} All that touches wort from now on is sanitised."), chilling.Minutes);
        }

        StageReadouts its = StageReadouts.Of(Stage.Cast, 0);
        Add("cast", Stage.Cast, "Cast", "Into the fermenter; leave hops and break behind as the kit does.",
            aims: _figures.Aims(("in the fermenter", its.LitresWithSolids), ("gravity", its.Gravity)), readings: StepFigures.GravityAndVolume("cast"));
    }

    private void AddPitch()
    {
        if (forecast.Pitch?.OxygenMgPerL is { } oxygen)
        {
            Add("aerate", Stage.Cast, "Aerate", Invariant($"Splash or shake, or give oxygen to about {oxygen:0} mg/L. Pure oxygen feeds fire: no flame near it."));
        }

        StepItem[] items = [.. At(AdditionPoint.Pitch).Select(Item)];
        double? celsius = planned.Recipe.Ferment.Count > 0 ? planned.Recipe.Ferment[0].Temperature.Value.Celsius : null;
        Add(PitchKey, Stage.Ferment, "Pitch", celsius is { } cool ? Invariant($"When the wort is at {cool:0.#} °C or a little below, and not before: heat kills yeast.") : "When the wort is cool: heat kills yeast.", items: items);
    }

    private IEnumerable<PlannedLine> At(AdditionPoint point) => planned.Lines.Where(line => line.Line.At.Point == point && !line.Line.Amount.IsNothing);

    private static StepItem Item(PlannedLine line) => new(
        ItemKey.OfLine(line.Number), line.Name, line.Line.Amount.Text, line.Hand is { Sheet: { } sheet, Lot: { } lot } ? LotKey.Of(sheet, lot) : null)
    {
        Kilograms = line.Kilograms > 0 ? line.Kilograms : null,
    };

    private static List<StepItem> Doses(string place, TreatedLiquor liquor) =>
    [
        .. liquor.Salts.Where(dose => dose.Grams >= 0.05).Select(dose => new StepItem($"{place}-{dose.Salt.Id}", dose.Salt.Name, Invariant($"{dose.Grams:0.0} g")) { Kilograms = dose.Grams / 1000 }),
        .. liquor.Acids.Where(dose => dose.Units >= 0.05).Select(dose => new StepItem($"{place}-{dose.Acid.Acid.Id}", dose.Acid.Name, Invariant($"{dose.Units:0.0} {(dose.Acid.Acid.Unit == Science.Water.DoseUnit.Gram ? "g" : "mL")}"))),
    ];

    private void Add(
        string key, Stage stage, string title, string say, double? minutes = null, IReadOnlyList<StepItem>? items = null,
        IReadOnlyList<StepAim>? aims = null, IReadOnlyList<StepReading>? readings = null, IReadOnlyList<StepTrouble>? wrong = null) =>
        _steps.Add(new BrewStep
        {
            Key = key, Stage = Names.Of(stage), Title = title, Say = say, Minutes = minutes,
            Items = items ?? [], Aims = aims ?? [], Readings = readings ?? [], IfWrong = wrong ?? [],
        });

    /// <summary>Each caution that can hurt stands at the first step of its place: a moment of the boil at that moment, all else where its stage begins.</summary>
    private List<BrewStep> WithCautions()
    {
        foreach (Caution caution in forecast.Cautions.Where(caution => caution.Severity >= Severity.Warning || caution.IsGrave))
        {
            int step = StepOf(caution.Place);
            if (step >= 0)
            {
                _steps[step] = _steps[step] with { Cautions = [.. _steps[step].Cautions, new StepCaution(caution.Code, Words.Of(caution.Severity), caution.Message)] };
            }
        }

        return _steps;
    }

    private int StepOf(Place place)
    {
        string key = place switch
        {
            { Stage: Stage.Boil or Stage.Stand, Count: { } minutes } => Invariant($"{Names.Of(place.Stage)}-{minutes:0.##}"),
            { Stage: Stage.Ferment, Count: 0 } => PitchKey,
            { Stage: Stage.Ferment, Count: not null } => "",
            { Stage: Stage.Mash } => "strike",
            _ => "",
        };
        int exact = _steps.FindIndex(step => step.Key == key);
        return exact >= 0 ? exact : place.Stage > Stage.Ferment || place is { Stage: Stage.Ferment, Count: > 0 } ? -1 : _steps.FindIndex(step => step.Stage == Names.Of(place.Stage));
    }
}
