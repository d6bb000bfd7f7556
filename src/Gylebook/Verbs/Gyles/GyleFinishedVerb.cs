using System.Globalization;
using Gylebook.Forecast.Json;
using Gylebook.Gyles;
using Gylebook.Gyles.Cellar;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Cellar;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle finished GYLE [--book FILE] [--json]: whether it has fermented out, why, and what to do.</summary>
internal sealed class GyleFinishedVerb : GyleVerb<GyleFinishedVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : PortionSettings;

    /// <inheritdoc/>
    protected override async Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, Settings settings, CancellationToken cancellation) =>
        settings.IsWrong(gyle, isNeeded: false) ? 1 : await TellAsync(desk, gyle, settings.Portion, settings.Json, cancellation);

    /// <summary>Tells it: of a portion, or of each in turn.</summary>
    internal static async Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, string? portion, bool json, CancellationToken cancellation)
    {
        List<Fermentation> told = [];
        foreach (string? one in portion is null ? gyle.Division.Names : [portion])
        {
            if (await new CellarDesk(desk, TimeProvider.System).OpenAsync(gyle, one, cancellation) is not { } of)
            {
                Console.Error.WriteLine(CommandLine.OneLine(gyle.Pitched is null ? $"\"{gyle.Line.Name}\" was not pitched yet: gylebook gyle do \"{gyle.Line.Name}\" --step pitch says so." : "This program can no longer read the files of the plan."));
                return 1;
            }

            told.Add(of);
        }

        if (json)
        {
            Console.WriteLine(JsonPen.Write(pen => Write(pen, told)));
            return 0;
        }

        foreach (Fermentation of in told)
        {
            Tell(of);
        }

        Console.WriteLine(GasCaution.Sentence);
        return 0;
    }

    private static void Tell(Fermentation of)
    {
        Console.WriteLine(of.Portion.Name is { } portion ? $"{portion}: {of.Finished.Heading}" : of.Finished.Heading);
        Console.WriteLine(of.Finished.Because);
        foreach (FinishedReason reason in of.Finished.Reasons)
        {
            Console.WriteLine($"  {(reason.Holds ? "for it" : "against it")}: {reason.Text} ({reason.Limit}).");
        }

        if (of.Done is var (low, likely, high))
        {
            Console.WriteLine($"Likely done {Day(likely)}, {Day(low)} to {Day(high)}; at {of.Fan.End.Middle.ToString("0.000", CultureInfo.InvariantCulture)}, {of.Fan.End.Low.ToString("0.000", CultureInfo.InvariantCulture)} to {of.Fan.End.High.ToString("0.000", CultureInfo.InvariantCulture)}.");
        }

        foreach (CellarTask task in of.ToDo)
        {
            Console.WriteLine($"{(task.At is { } at ? Day(at) : "now")}: {task.What}{(task.Why is { } why ? $" {why}" : "")}{string.Concat(task.Cautions.Select(caution => $" {caution}"))}");
        }
    }

    /// <summary>One alone as it is; several as a list.</summary>
    private static void Write(JsonPen pen, List<Fermentation> told)
    {
        if (told is [var one])
        {
            Write(pen, one);
            return;
        }

        pen.List("portions", told, of => Write(pen, of));
    }

    private static void Write(JsonPen pen, Fermentation of)
    {
        pen.Text("portion", of.Portion.Name);
        pen.Text("verdict", char.ToLowerInvariant(of.Finished.Verdict.ToString()[0]) + of.Finished.Verdict.ToString()[1..]);
        pen.Text("because", of.Finished.Because);
        pen.List("reasons", of.Finished.Reasons, reason =>
        {
            pen.Flag("holds", reason.Holds);
            pen.Text("text", reason.Text);
            pen.Text("limit", reason.Limit);
        });
        pen.Block("end", () =>
        {
            pen.Number("low", of.Fan.End.Low, 4);
            pen.Number("likely", of.Fan.End.Middle, 4);
            pen.Number("high", of.Fan.End.High, 4);
        });
        pen.Text("doneLow", GyleText.Stamp(of.Done?.Low));
        pen.Text("done", GyleText.Stamp(of.Done?.Likely));
        pen.Text("doneHigh", GyleText.Stamp(of.Done?.High));
        pen.List("toDo", of.ToDo, task =>
        {
            pen.Text("at", GyleText.Stamp(task.At));
            pen.Text("what", task.What);
            pen.Text("why", task.Why);
            pen.Texts("cautions", task.Cautions);
        });
    }

    private static string Day(DateTimeOffset at) => at.ToLocalTime().ToString("ddd d MMM", CultureInfo.InvariantCulture);
}
