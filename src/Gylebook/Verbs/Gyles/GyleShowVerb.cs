using Gylebook.Forecast.Json;
using Gylebook.Forecast.Report;
using Gylebook.Gyles.Plans;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle show GYLE [--book FILE] [--json]: the plan as it was frozen beside the forecast with all that was read.</summary>
internal sealed class GyleShowVerb : GyleVerb<GyleShowVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : GyleSettings;

    /// <inheritdoc/>
    protected override Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, Settings settings, CancellationToken cancellation)
    {
        if (gyle.Live() is not { } live)
        {
            Console.Error.WriteLine("This program can no longer read the files of the plan, so there is no live forecast; gylebook gyle steps still tells the plan.");
            return Task.FromResult(1);
        }

        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                GyleText.Write(pen, gyle.Line);
                pen.Text("engine", gyle.Plan.Engine);
                pen.Raw("planned", FrozenForecast.Of(gyle.Plan).HeadlineText);
                ForecastJson.WriteHeadline(pen, live);
                ForecastJson.WriteStages(pen, live);
                GyleText.WriteReadings(pen, gyle);
                GyleText.WriteSteps(pen, gyle);
            }));
            return Task.FromResult(0);
        }

        Console.WriteLine(CommandLine.OneLine(GyleText.Line(gyle.Line)));
        foreach (string line in Numbers(gyle, live).Concat(GyleText.Readings(gyle)).Concat(GyleText.Steps(gyle)))
        {
            Console.WriteLine(line);
        }

        return Task.FromResult(0);
    }

    private static IEnumerable<string> Numbers(OpenGyle gyle, BrewForecast live)
    {
        FrozenForecast frozen = FrozenForecast.Of(gyle.Plan);
        foreach (Headline headline in live.Headline.Where(headline => headline.Band is not null))
        {
            string now = Invariant($"{Math.Round(headline.Band!.Likely, headline.Decimals)}"), low = Invariant($"{Math.Round(headline.Band.Low, headline.Decimals)}"), high = Invariant($"{Math.Round(headline.Band.High, headline.Decimals)}");
            string planned = frozen.Likely(headline.Name) is { } was ? Invariant($", planned {Math.Round(was, headline.Decimals)}") : "";
            yield return $"{headline.Title}: {now} ({low} to {high}) {headline.Band.Unit}{planned}";
        }
    }
}
