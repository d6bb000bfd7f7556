using System.Globalization;
using Gylebook.Forecast.Json;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Gyles.Shopping;
using Gylebook.Gyles.Vessels;
using Gylebook.Recipes.Interchange;
using Gylebook.Recipes.Kits;
using Gylebook.Store;
using Gylebook.Web.Features.Gyles;

namespace Gylebook.Terminal;

/// <summary>Gyles and their brew day as lines and as JSON.</summary>
internal static class GyleText
{
    /// <summary>A status as files have it: <c>brewing</c>.</summary>
    public static string Word(GyleStatus status) => status.ToString().ToLowerInvariant();

    /// <summary>A gyle in a line.</summary>
    public static string Line(GyleLine gyle) =>
        $"{gyle.Name}: {Word(gyle.Status)}{(gyle.Started is { } started ? $" since {When(started)}" : gyle.Planned is { } planned ? $" for {planned.ToLocalTime().ToString("d MMM yyyy", CultureInfo.InvariantCulture)}" : "")}{(gyle.Stays.Count > 0 ? $", in {string.Join(" and ", gyle.Stays.Select(stay => stay.Vessel))}" : "")}{(gyle.IsDemo ? ", invented for the demo" : "")}";

    /// <summary>A gyle in a few keys.</summary>
    public static void Write(JsonPen pen, GyleLine gyle)
    {
        pen.Text("name", gyle.Name);
        pen.Text("number", gyle.Id.ToString());
        pen.Text("status", Word(gyle.Status));
        pen.Text("planned", Stamp(gyle.Planned));
        pen.Text("started", Stamp(gyle.Started));
        WriteVessels(pen, gyle);
        pen.Flag("isDemo", gyle.IsDemo);
    }

    /// <summary>Its vessels, each in a line.</summary>
    public static IEnumerable<string> Vessels(GyleLine gyle) => gyle.Stays.Select(stay => $"{(stay.Kind == VesselKind.Keg ? "Keg" : "Fermenter")} {stay.Vessel}, {VesselDays.Words(stay)}.");

    /// <summary>Its vessels as JSON.</summary>
    public static void WriteVessels(JsonPen pen, GyleLine gyle) => pen.List("vessels", gyle.Stays, stay =>
    {
        pen.Text("kind", stay.Kind.ToString().ToLowerInvariant());
        pen.Text("name", stay.Vessel);
        pen.Text("from", Day(stay.From));
        pen.Text("until", stay.Until is { } until ? Day(until) : null);
    });

    /// <summary>What has to be bought, each thing in a line; then what the larder does not know.</summary>
    public static IEnumerable<string> Shopping(ShoppingList list)
    {
        foreach (ShoppingItem item in list.ToBuy)
        {
            string packs = item is { Packs: { } count, PackKilograms: { } pack } ? Invariant($"{count} × {Weight(pack)}") : Weight(item.ToBuyKilograms!.Value);
            string cost = item.Cost is { } price ? Invariant($", about {price.Value:0.00} {price.Currency}") : "";
            yield return $"Buy {packs} of {item.What}: {Weight(item.WantedKilograms!.Value)} are wanted, {Weight(item.AtHandKilograms!.Value)} at hand{cost}.";
        }

        if (list.Unknown.Any())
        {
            yield return $"Look whether you have: {string.Join(", ", list.Unknown.Select(item => $"{item.Wanted} {item.What}"))}.";
        }
    }

    /// <summary>All that is wanted as JSON, and what of it has to be bought.</summary>
    public static void WriteShopping(JsonPen pen, ShoppingList list) => pen.List("shopping", list.Items, item =>
    {
        pen.Text("what", item.What);
        pen.Text("wanted", item.Wanted);
        pen.Number("wantedKg", item.WantedKilograms, 5);
        pen.Number("atHandKg", item.AtHandKilograms, 5);
        pen.Number("toBuyKg", item.ToBuyKilograms, 5);
        pen.Number("packs", item.Packs, 0);
        pen.Number("packKg", item.PackKilograms, 5);
        pen.Number("cost", (double?)item.Cost?.Value, 2);
        pen.Text("currency", item.Cost?.Currency);
    });

    /// <summary>Steps, as a brewer reads them off a terminal.</summary>
    public static IEnumerable<string> Steps(OpenGyle gyle)
    {
        foreach (StepNow now in gyle.Log.Steps)
        {
            string box = now.State switch { StepState.Done => "[x]", StepState.Skipped => "[-]", _ => "[ ]" };
            string minutes = now.Step.Minutes is { } long_ ? Invariant($" ({long_:0} min)") : "";
            yield return $"{box} {now.Step.Key}: {now.Step.Title}{minutes}. {now.Step.Say}{(now.Why is { } why ? $" Left out: {why}" : "")}";
            foreach (StepItem item in now.Step.Items)
            {
                yield return $"      {(now.Ticked.ContainsKey(item.Key) ? "[x]" : "[ ]")} {item.Key}: {item.Amount} {item.What}{(item.Lot is { } lot ? $", lot {lot}" : "")}";
            }

            foreach (StepAim aim in now.Step.Aims)
            {
                yield return $"      {aim.What}: {Told(aim.Likely, aim)} ({Told(aim.Low, aim)} to {Told(aim.High, aim)}) {aim.Unit}";
            }

            foreach (StepCaution caution in now.Step.Cautions)
            {
                yield return $"      take care: {caution.Message}";
            }
        }

        foreach (RunningTimer timer in gyle.Log.Timers)
        {
            yield return $"Timer: {timer.Title}, until {When(timer.Until)}";
        }
    }

    /// <summary>Steps as JSON.</summary>
    public static void WriteSteps(JsonPen pen, OpenGyle gyle) => pen.List("steps", gyle.Log.Steps, now =>
    {
        pen.Text("key", now.Step.Key);
        pen.Text("stage", now.Step.Stage);
        pen.Text("title", now.Step.Title);
        pen.Text("say", now.Step.Say);
        pen.Text("state", now.State.ToString().ToLowerInvariant());
        pen.Text("at", Stamp(now.At));
        pen.Text("why", now.Why);
        pen.Number("minutes", now.Step.Minutes, 1);
        pen.List("items", now.Step.Items, item =>
        {
            pen.Text("key", item.Key);
            pen.Text("what", item.What);
            pen.Text("amount", item.Amount);
            pen.Text("lot", item.Lot);
            pen.Flag("ticked", now.Ticked.ContainsKey(item.Key));
        });
        pen.List("aims", now.Step.Aims, aim =>
        {
            pen.Text("what", aim.What);
            pen.Number("low", aim.Low, aim.Decimals);
            pen.Number("likely", aim.Likely, aim.Decimals);
            pen.Number("high", aim.High, aim.Decimals);
            pen.Text("unit", aim.Unit);
        });
        pen.List("read", now.Step.Readings, reading =>
        {
            pen.Text("at", reading.At);
            pen.Text("what", reading.What);
            pen.Text("how", reading.How);
        });
        pen.Texts("cautions", now.Step.Cautions.Select(caution => caution.Message));
    });

    /// <summary>Readings as lines: what was typed, where and when.</summary>
    public static IEnumerable<string> Readings(OpenGyle gyle) => gyle.Log.Readings.Select(reading =>
        $"{When(reading.At)}, {reading.Stage}: {string.Join(", ", Told(reading))}");

    /// <summary>Readings as JSON.</summary>
    public static void WriteReadings(JsonPen pen, OpenGyle gyle) => pen.List("readings", gyle.Log.Readings, reading =>
    {
        pen.Text("entry", reading.EntryId?.ToString());
        pen.Text("readAt", Stamp(reading.At));
        pen.Text("at", reading.Stage);
        pen.Text("told", string.Join(", ", Told(reading)));
        pen.Number("gravity", reading.Gravity?.Ratio, 5);
        pen.Number("litres", reading.Volume?.Litres, 3);
        pen.Number("celsius", reading.Temperature?.Celsius, 2);
        pen.Number("ph", reading.Ph, 3);
        pen.Text("instrument", reading.Instrument);
    });

    private static IEnumerable<string> Told(GyleReading reading)
    {
        if (reading.Typed is not { } typed || ReadingsFile.ReadEntry(typed).Reading is not { } taken)
        {
            return [];
        }

        return new[] { taken.Gravity?.Text, taken.Volume?.Text, taken.Ph is { } ph ? $"pH {ph.Text}" : null, taken.Temperature is { } at ? $"at {at.Text}" : null, taken.Instrument }.OfType<string>();
    }

    private static string Told(double value, StepAim aim) => value.ToString(Invariant($"F{aim.Decimals}"), CultureInfo.InvariantCulture);

    private static string Weight(double kilograms) => kilograms < 1 ? Invariant($"{kilograms * 1000:0.#} g") : Invariant($"{kilograms:0.00} kg");

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string When(DateTimeOffset instant) => instant.ToLocalTime().ToString("d MMM yyyy HH:mm", CultureInfo.InvariantCulture);

    public static string? Stamp(DateTimeOffset? instant) => instant?.ToUniversalTime().ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture);
}
