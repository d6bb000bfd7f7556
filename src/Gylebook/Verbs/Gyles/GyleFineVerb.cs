using System.ComponentModel;
using Gylebook.Forecast.Json;
using Gylebook.Gyles.Portions;
using Gylebook.Recipes.Ingredients;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Cellar;
using Gylebook.Web.Features.Gyles.Packaging;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle fine GYLE [--with NAME --amount AMOUNT] [--portion NAME] [--book FILE] [--json]: what helps it to clear, and how much.</summary>
internal sealed class GyleFineVerb : GyleVerb<GyleFineVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : PortionSettings
    {
        /// <summary>What was given.</summary>
        [CommandOption("--with <NAME>")]
        [Description("What was given, by its generic name: gelatine. Doses are told when unsaid.")]
        public string? With { get; init; }

        /// <summary>How much.</summary>
        [CommandOption("--amount <AMOUNT>")]
        [Description("How much of it: \"3 g\".")]
        public string? Amount { get; init; }

        /// <inheritdoc/>
        protected override IReadOnlyList<(string Name, string Wants, string? Value)> Valued => [("--with", "a name", With), ("--amount", "an amount", Amount), .. base.Valued];

        /// <inheritdoc/>
        public override ValidationResult Validate() => base.Validate() is { Successful: false } lacking ? lacking
            : With is null != Amount is null ? ValidationResult.Error("--with and --amount go together: what was given, and how much of it.")
            : ValidationResult.Success();
    }

    /// <inheritdoc/>
    protected override async Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, Settings settings, CancellationToken cancellation)
    {
        if (settings.IsWrong(gyle, isNeeded: true))
        {
            return 1;
        }

        if (gyle.Live() is not { } live || PortionView.Of(live, gyle.Division, settings.Portion).Litres(live) is not { } litres)
        {
            Console.Error.WriteLine("Nobody can tell how much beer there is: this program can no longer read the files of the plan.");
            return 1;
        }

        if (settings.With is { } with)
        {
            PackageDesk packages = new(desk, new CellarDesk(desk, TimeProvider.System), TimeProvider.System);
            if (await packages.FineAsync(gyle, settings.Portion, with, settings.Amount!, litres.Likely, cancellation) is { } wrong)
            {
                Console.Error.WriteLine(CommandLine.OneLine($"Not written down. {wrong}."));
                return 1;
            }

            Console.WriteLine(settings.Json ? JsonPen.Write(pen => pen.Text("given", $"{settings.Amount} {with}")) : "Written into the log.");
            return 0;
        }

        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen => pen.List("finings", Finings.OfBeer, fining =>
            {
                pen.Text("name", fining.Name);
                pen.Number("low", fining.DoseFor(litres.Likely).Low, 2);
                pen.Number("high", fining.DoseFor(litres.Likely).High, 2);
                pen.Text("unit", fining.Unit);
                pen.Text("how", fining.How);
            })));
            return 0;
        }

        Console.WriteLine(Invariant($"Usual doses for {litres.Likely:0.0} L, from memory: the packet goes before them."));
        foreach (Fining fining in Finings.OfBeer)
        {
            (double low, double high) = fining.DoseFor(litres.Likely);
            Console.WriteLine(Invariant($"{fining.Name}: {low:0.0} to {high:0.0} {fining.Unit}. {fining.How}"));
        }

        return 0;
    }
}
