using System.ComponentModel;
using Gylebook.Engine.State;
using Gylebook.Forecast;
using Gylebook.Forecast.Json;
using Gylebook.Forecast.Liquors;
using Gylebook.Science.Water;
using Gylebook.Terminal;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook water acid --alkalinity TEXT --ph N --to N --volume TEXT --acid NAME [ions] [--temperature TEXT] [--density TEXT] [--open] [--json]</summary>
internal sealed class WaterAcidVerb : Command<WaterAcidVerb.Settings>
{
    /// <summary>What it takes.</summary>
    internal sealed class Settings : JsonSettings
    {
        /// <summary>Alkalinity.</summary>
        [CommandOption("--alkalinity <AMOUNT>", isRequired: true)]
        [Description("Alkalinity: \"100 mg/L CaCO3\", \"5.6 dH\", \"2 mEq/L\".")]
        public required string Alkalinity { get; init; }

        /// <summary>pH now.</summary>
        [CommandOption("--ph <PH>", isRequired: true)]
        [Description("The liquor's pH as it is.")]
        public required string Ph { get; init; }

        /// <summary>pH wanted.</summary>
        [CommandOption("--to <PH>", isRequired: true)]
        [Description("The pH wanted.")]
        public required string To { get; init; }

        /// <summary>How much.</summary>
        [CommandOption("--volume <VOLUME>", isRequired: true)]
        [Description("How much liquor: \"15 L\".")]
        public required string Volume { get; init; }

        /// <summary>The acid.</summary>
        [CommandOption("--acid <NAME>", isRequired: true)]
        [Description("The acid with its strength: \"lactic 88 %\".")]
        public required string Acid { get; init; }

        /// <summary>Density of the acid.</summary>
        [CommandOption("--density <DENSITY>")]
        [Description("The acid's density, for a strength by mass that our tables have not: \"1.06 kg/L\".")]
        public string? Density { get; init; }

        /// <summary>Open to the air.</summary>
        [CommandOption("--open")]
        [Description("The pH wanted is that after hours open to the air, its CO2 gone; without it, that of a closed vessel, or right after stirring.")]
        public bool Open { get; init; }

        /// <summary>Temperature.</summary>
        [CommandOption("--temperature <TEMPERATURE>")]
        [Description("The liquor's temperature, at which both pH are meant; 20 °C when unsaid.")]
        public string? Temperature { get; init; }

        /// <summary>Calcium.</summary>
        [CommandOption("--calcium <AMOUNT>")]
        [Description("Calcium, mg/L; the ions move the answer a little.")]
        public string? Calcium { get; init; }

        /// <summary>Magnesium.</summary>
        [CommandOption("--magnesium <AMOUNT>")]
        [Description("Magnesium, mg/L.")]
        public string? Magnesium { get; init; }

        /// <summary>Sodium.</summary>
        [CommandOption("--sodium <AMOUNT>")]
        [Description("Sodium, mg/L.")]
        public string? Sodium { get; init; }

        /// <summary>Potassium.</summary>
        [CommandOption("--potassium <AMOUNT>")]
        [Description("Potassium, mg/L.")]
        public string? Potassium { get; init; }

        /// <summary>Sulphate.</summary>
        [CommandOption("--sulfate|--sulphate <AMOUNT>")]
        [Description("Sulphate, mg/L.")]
        public string? Sulphate { get; init; }

        /// <summary>Chloride.</summary>
        [CommandOption("--chloride <AMOUNT>")]
        [Description("Chloride, mg/L.")]
        public string? Chloride { get; init; }
    }

    /// <inheritdoc/>
    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        AcidQuestion question = AcidQuestion.Read(settings);
        if (question.Findings.Count > 0)
        {
            return FindingLines.Tell(question.Findings, settings.Json);
        }

        AcidAnswer answer = AcidAnswer.Of(question);
        Caution caution = TreatmentCautions.ForAcid(question.Acid!.Acid, Stage.Strike);
        Console.WriteLine(settings.Json ? Json(question, answer, caution) : Text(question, answer, caution));
        return 0;
    }

    private static string Json(AcidQuestion question, AcidAnswer answer, Caution caution) => JsonPen.Write(pen =>
    {
        bool powder = question.Acid!.Unit == DoseUnit.Gram;
        pen.Text("format", "gylebook-acid/1");
        pen.Text("acid", question.Acid.Id);
        pen.Number("from", question.Ph, 3);
        pen.Number("to", question.To, 3);
        pen.Number("temperatureC", question.Celsius, 2);
        pen.Flag("open", question.IsOpen);
        pen.Number("litres", question.Litres, 4);
        pen.Number("ionicStrength", answer.IonicStrength, 6);
        pen.Number("milliequivalentsPerLitre", answer.MilliequivalentsPerLitre, 5);
        pen.Number("millilitres", powder ? null : answer.Units, 4);
        pen.Number("grams", powder ? answer.Units : null, 4);
        pen.List("cautions", [caution], c => ForecastJson.WriteCaution(pen, c));
    });

    private static string Text(AcidQuestion question, AcidAnswer answer, Caution caution) => Invariant($"{answer.Units:0.00} {question.Acid!.UnitSymbol} of {question.Acid.Name} for {question.Litres:0.##} L, from pH {question.Ph:0.00} to {question.To:0.00} at {question.Celsius:0.#} °C{(question.IsOpen ? " at rest with the air" : "")} ({answer.MilliequivalentsPerLitre:0.000} mEq/L)\nCaution: {caution.Message}");
}
