using Gylebook.Forecast.Json;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle steps GYLE [--book FILE] [--json]</summary>
internal sealed class GyleStepsVerb : GyleVerb<GyleStepsVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : GyleSettings;

    /// <inheritdoc/>
    protected override Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, Settings settings, CancellationToken cancellation)
    {
        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen =>
            {
                pen.Text("name", gyle.Line.Name);
                pen.Text("current", gyle.Log.Current?.Step.Key);
                GyleText.WriteSteps(pen, gyle);
            }));
            return Task.FromResult(0);
        }

        foreach (string line in GyleText.Steps(gyle))
        {
            Console.WriteLine(line);
        }

        return Task.FromResult(0);
    }
}
