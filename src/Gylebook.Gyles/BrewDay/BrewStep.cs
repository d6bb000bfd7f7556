namespace Gylebook.Gyles.BrewDay;

/// <summary>One thing to do on brew day: one sentence, what goes in, what it should come to, what to read.</summary>
public sealed record BrewStep
{
    /// <summary>What the log calls it by, once in a plan: <c>strike</c>, <c>rest-1</c>, <c>boil-10</c>.</summary>
    public required string Key { get; init; }

    /// <summary>The stage it belongs to, as the engine names stages: <c>copperUp</c>.</summary>
    public required string Stage { get; init; }

    /// <summary>In two or three words: "Strike".</summary>
    public required string Title { get; init; }

    /// <summary>What to do, in a sentence.</summary>
    public required string Say { get; init; }

    /// <summary>What goes in, to be ticked off.</summary>
    public IReadOnlyList<StepItem> Items { get; init; } = [];

    /// <summary>What it should come to.</summary>
    public IReadOnlyList<StepAim> Aims { get; init; } = [];

    /// <summary>How long it lasts, minutes; null for as long as it takes.</summary>
    public double? Minutes { get; init; }

    /// <summary>What is worth reading, and how.</summary>
    public IReadOnlyList<StepReading> Readings { get; init; } = [];

    /// <summary>What can hurt, in full.</summary>
    public IReadOnlyList<StepCaution> Cautions { get; init; } = [];

    /// <summary>What to do if it goes wrong.</summary>
    public IReadOnlyList<StepTrouble> IfWrong { get; init; } = [];
}

/// <summary>Something that goes in.</summary>
/// <param name="Key">What the log calls it by, once in a plan: <c>line-3</c>, <c>salt-gypsum</c>.</param>
/// <param name="What">Its name.</param>
/// <param name="Amount">How much, as recipe or plan say: <c>45 g</c>.</param>
/// <param name="Lot">The lot it is taken from: <c>sheet/lot</c>; null where none is named.</param>
public sealed record StepItem(string Key, string What, string Amount, string? Lot = null)
{
    /// <summary>The same weighed, kg; null where it is not weighed.</summary>
    public double? Kilograms { get; init; }
}

/// <summary>A number to come to, low to high.</summary>
/// <param name="What">Which: "in the kettle".</param>
/// <param name="Low">Low end; the likely figure where nobody knows the width.</param>
/// <param name="Likely">As planned.</param>
/// <param name="High">High end.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Decimals">Digits that a person makes use of.</param>
public sealed record StepAim(string What, double Low, double Likely, double High, string Unit, int Decimals);

/// <summary>A reading worth taking.</summary>
/// <param name="At">Where, as readings files say it: <c>copper-up</c>.</param>
/// <param name="What">Which: <c>gravity</c>, <c>volume</c>, <c>ph</c>, <c>temperature</c>.</param>
/// <param name="How">How to take the sample.</param>
public sealed record StepReading(string At, string What, string How);

/// <summary>A caution of a step.</summary>
/// <param name="Code">Its stable name.</param>
/// <param name="Severity">How serious: <c>warning</c>.</param>
/// <param name="Message">In full.</param>
public sealed record StepCaution(string Code, string Severity, string Message);

/// <summary>Something that can go wrong, and what to do then.</summary>
/// <param name="If">What one sees: "It foams up".</param>
/// <param name="Do">What to do, with the plan's own figures.</param>
public sealed record StepTrouble(string If, string Do);
