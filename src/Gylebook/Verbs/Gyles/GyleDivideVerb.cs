using System.ComponentModel;
using System.Globalization;
using Gylebook.Forecast.Json;
using Gylebook.Gyles.Portions;
using Gylebook.Terminal;
using Gylebook.Web.Features.Gyles;
using Gylebook.Web.Features.Gyles.Cellar;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs.Gyles;

/// <summary>gylebook gyle divide GYLE "on fruit=50 %, plain=50 %" [--book FILE] [--json]</summary>
internal sealed class GyleDivideVerb : GyleVerb<GyleDivideVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : GyleSettings
    {
        /// <summary>The portions.</summary>
        [CommandArgument(1, "<PORTIONS>")]
        [Description("Names and shares, all of the beer together: \"on fruit=50 %, plain=50 %\".")]
        public required string Portions { get; init; }

        /// <inheritdoc/>
        public override ValidationResult Validate() => base.Validate() is { Successful: false } lacking ? lacking
            : Shares() is null ? ValidationResult.Error($"{CommandLine.OneLine(Portions)}; write names and shares, as in \"on fruit=50 %, plain=50 %\".")
            : ValidationResult.Success();

        /// <summary>The portions; null where one cannot be read.</summary>
        internal IReadOnlyList<DividedPortion>? Shares()
        {
            List<DividedPortion> read = [];
            foreach (string typed in Portions.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
            {
                if (typed.Split('=', 2, StringSplitOptions.TrimEntries) is not [{ Length: > 0 } name, var share]
                    || !double.TryParse(share.TrimEnd('%', ' '), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double percent))
                {
                    return null;
                }

                read.Add(new DividedPortion(name, percent / 100));
            }

            return read;
        }
    }

    /// <inheritdoc/>
    protected override async Task<int> TellAsync(GyleDesk desk, OpenGyle gyle, Settings settings, CancellationToken cancellation)
    {
        IReadOnlyList<DividedPortion> portions = settings.Shares()!;
        if (await new CellarDesk(desk, TimeProvider.System).DivideAsync(gyle, portions, cancellation) is { } wrong)
        {
            Console.Error.WriteLine(CommandLine.OneLine($"Not divided: {wrong}."));
            return 1;
        }

        Console.WriteLine(settings.Json
            ? JsonPen.Write(pen => pen.List("portions", portions, portion =>
            {
                pen.Text("name", portion.Name);
                pen.Number("share", portion.Share, 4);
            }))
            : $"Divided into {string.Join(" and ", portions.Select(portion => portion.Name))}: say --portion from now on. Move beer without splashing, and let the gas out before you open anything.");
        return 0;
    }
}
