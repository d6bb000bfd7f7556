using System.ComponentModel;
using Gylebook.Forecast.Json;
using Gylebook.Forecast.Learning;
using Gylebook.Gyles.Tasting;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Glass;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle taught GYLE [--take FIGURE] [--book FILE] [--json]: plan beside measured, and what the kit may learn.</summary>
internal sealed class GyleTaughtVerb : GyleVerb<GyleTaughtVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : GyleSettings
    {
        /// <summary>A figure to take.</summary>
        [CommandOption("--take <FIGURE>")]
        [Description("Take this figure into the kit of the book, by its name as it is told here.")]
        public string? Take { get; init; }

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued => [("--take", "a figure", Take)];
    }

    /// <inheritdoc/>
    protected override async Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, Settings settings, CancellationToken cancellation)
    {
        GlassDesk glass = new(desk, TimeProvider.System);
        OpenGlass of = await GlassDesk.OpenAsync(gyle, cancellation);
        KitLearning? learning = of.Held.Count > 0 ? await glass.TaughtAsync(gyle, cancellation) : null;
        ProposedFigure[] figures = [.. (learning?.Figures ?? []).Where(figure => figure.IsTaught)];
        if (settings.Take is { } take)
        {
            if (Array.Find(figures, figure => figure.Name == take && figure.CanBeAccepted) is not { } figure)
            {
                Console.Error.WriteLine(CommandLine.OneLine($"--take: {take}; must be one of {string.Join(", ", figures.Where(one => one.CanBeAccepted).Select(one => one.Name))}."));
                return 1;
            }

            if (!await glass.TakeAsync(gyle, learning!, figure.Name, isTaken: true, cancellation))
            {
                Console.Error.WriteLine("The kit was changed meanwhile: nothing was taken. Try again.");
                return 1;
            }
        }

        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen => Write(pen, of, figures, settings.Take)));
            return 0;
        }

        foreach (HeldNumber held in of.Held)
        {
            string ends = held.Ends is var (low, high) ? $"{held.Readout.Digits(low)} to {held.Readout.Digits(high)}" : "no band";
            Console.WriteLine($"{held.Title}: {held.Readout.Told(held.Measured)}, planned {ends}{(held.IsInside switch { true => ": inside", false => ": outside", _ => "" })}{(held.Why is { } why ? $"; {why}" : "")}");
        }

        foreach (ProposedFigure figure in figures)
        {
            Console.WriteLine(figure.Sentence);
        }

        Console.WriteLine(figures.Length == 0 ? "Nothing to teach: it was brewed on the built-in kit, or too little was read." : settings.Take is null ? "Nothing is changed until --take says so." : $"Taken: {settings.Take}.");
        return 0;
    }

    private static void Write(JsonPen pen, OpenGlass of, IReadOnlyList<ProposedFigure> figures, string? taken)
    {
        pen.List("held", of.Held, held =>
        {
            pen.Text("what", held.Title);
            pen.Number("low", held.Ends?.Low, 4);
            pen.Number("high", held.Ends?.High, 4);
            pen.Number("measured", held.Measured, 4);
            pen.Text("unit", held.Readout.Unit);
            pen.Text("why", held.Why);
        });
        pen.List("figures", figures, figure =>
        {
            pen.Text("figure", figure.Name);
            pen.Text("words", figure.Sentence);
            pen.Flag("canBeTaken", figure.CanBeAccepted);
        });
        pen.Text("taken", taken);
    }
}
