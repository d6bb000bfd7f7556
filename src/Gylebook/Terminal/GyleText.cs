using System.Globalization;
using Gylebook.Forecast.Json;
using Gylebook.Gyles;
using Gylebook.Gyles.BrewDay;
using Gylebook.Recipes.Interchange;
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
        $"{gyle.Name}: {Word(gyle.Status)}{(gyle.Started is { } started ? $" since {When(started)}" : gyle.Planned is { } planned ? $", planned for {When(planned)}" : "")}{(gyle.IsDemo ? ", invented for the demo" : "")}";

    /// <summary>A gyle in a few keys.</summary>
    public static void Write(JsonPen pen, GyleLine gyle)
    {
        pen.Text("name", gyle.Name);
        pen.Text("number", gyle.Id.ToString());
        pen.Text("status", Word(gyle.Status));
        pen.Text("planned", Stamp(gyle.Planned));
        pen.Text("started", Stamp(gyle.Started));
        pen.Flag("isDemo", gyle.IsDemo);
    }

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

    private static string When(DateTimeOffset instant) => instant.ToLocalTime().ToString("d MMM yyyy HH:mm", CultureInfo.InvariantCulture);

    private static string? Stamp(DateTimeOffset? instant) => instant?.ToUniversalTime().ToString("yyyy-MM-ddTHH:mm:ssZ", CultureInfo.InvariantCulture);
}
