using System.ComponentModel;
using Gylebook.Forecast.Json;
using Gylebook.Recipes;
using Gylebook.Terminal;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook water PLAN [--kit FILE] [--json]</summary>
internal sealed class WaterVerb : Command<WaterVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : KitSettings
    {
        /// <summary>The plan.</summary>
        [CommandArgument(0, "<PLAN>")]
        [Description("A water plan. A recipe it names is looked up beside it.")]
        public required string Plan { get; init; }
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        OpenedWater plan = OpenedWater.From(settings.Plan, settings.Kit);
        if (settings.Json)
        {
            Console.WriteLine(WaterJson.Write(plan.Outcome, plan.Findings));
        }
        else if (plan.Outcome is null)
        {
            return FindingLines.Tell(plan.Findings, json: false);
        }
        else
        {
            WaterText.Write(plan.Outcome, plan.Findings);
        }

        return plan.Outcome is null || plan.Findings.Any(finding => finding.Severity == Severity.Error) ? 1 : 0;
    }
}
