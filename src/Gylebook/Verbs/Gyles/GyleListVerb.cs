using Gylebook.Forecast.Json;
using Gylebook.Store;
using Gylebook.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle list [--book FILE] [--json]</summary>
internal sealed class GyleListVerb : AsyncCommand<GyleListVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : BookOption
    {
        /// <inheritdoc/>
        public override ValidationResult Validate() => CommandLine.NoneLacksItsValue(("--book", "a file", Book));
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (await settings.OpenAsync("with gyles in it", cancellationToken) is not { } opened)
        {
            return 1;
        }

        await using Book book = opened;
        List<GyleLine> gyles = await book.Gyles.ListAsync(cancellationToken);
        if (settings.Json)
        {
            Console.WriteLine(JsonPen.Write(pen => pen.List("gyles", gyles, gyle => GyleText.Write(pen, gyle))));
            return 0;
        }

        foreach (GyleLine gyle in gyles)
        {
            Console.WriteLine(CommandLine.OneLine(GyleText.Line(gyle)));
        }

        if (gyles.Count == 0)
        {
            Console.WriteLine("No gyle is in the book; gylebook gyle start RECIPE begins one.");
        }

        return 0;
    }
}
