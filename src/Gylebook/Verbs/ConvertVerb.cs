using System.ComponentModel;
using Gylebook.Science.Quantities;
using Gylebook.Terminal;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook convert "12.5 P" --to SG</summary>
internal sealed class ConvertVerb : Command<ConvertVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : CommandSettings
    {
        /// <summary>Number and unit.</summary>
        [CommandArgument(0, "<VALUE>")]
        [Description("A number and its unit, in quotes: \"12.5 P\", \"5 US gal\", \"66 °C\", \"-2 °C\".")]
        public required string Value { get; init; }

        /// <summary>The unit wanted.</summary>
        [CommandOption("--to <UNIT>", isRequired: true)]
        [Description("The unit to write it in: SG, L, \"% ABW\", \"mg/L CaCO3\".")]
        public required string To { get; init; }

        /// <inheritdoc/>
        public override ValidationResult Validate() => CommandLine.NoneLacksItsValue(("--to", "a unit", To));
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (!UnitConversion.TryConvert(settings.Value, settings.To, out Conversion? conversion, out string problem))
        {
            Console.Error.WriteLine(CommandLine.OneLine(problem));
            return 1;
        }

        Console.WriteLine(conversion);
        return 0;
    }
}
