namespace Gylebook.Pictures.Sheets;

/// <summary>A brew day as it lies beside the kettle, all in words: boxes to tick, blanks for the clock and for what is read. Written by <see cref="BrewSheetHtml"/>.</summary>
public sealed record BrewSheet
{
    /// <summary>The gyle's name.</summary>
    public required string Name { get; init; }

    /// <summary>What plan it is of, in a line.</summary>
    public required string Under { get; init; }

    /// <summary>What must be told to people who cannot eat everything.</summary>
    public IReadOnlyList<string> Allergens { get; init; } = [];

    /// <summary>The steps, in order.</summary>
    public required IReadOnlyList<BrewSheetStep> Steps { get; init; }

    /// <summary>What to do for a point off.</summary>
    public IReadOnlyList<BrewSheetMend> Mends { get; init; } = [];

    /// <summary>What those answers rest on, in a sentence; empty where there are none.</summary>
    public string MendsAside { get; init; } = "";

    /// <summary>What comes on the days after.</summary>
    public IReadOnlyList<BrewSheetMend> Later { get; init; } = [];

    /// <summary>Cautions of the days after.</summary>
    public IReadOnlyList<BrewSheetCaution> LaterCautions { get; init; } = [];

    /// <summary>What the brewer wants to remember; empty for nothing.</summary>
    public string Notes { get; init; } = "";
}

/// <summary>A step.</summary>
/// <param name="Title">In two or three words.</param>
/// <param name="Say">What to do.</param>
/// <param name="Items">What goes in, each with a box.</param>
/// <param name="Blanks">What is read, with room to write it.</param>
/// <param name="Cautions">What can hurt.</param>
public sealed record BrewSheetStep(string Title, string Say, IReadOnlyList<BrewSheetItem> Items, IReadOnlyList<BrewSheetBlank> Blanks, IReadOnlyList<BrewSheetCaution> Cautions);

/// <summary>Something that goes in.</summary>
/// <param name="What">Its name.</param>
/// <param name="Amount">How much to weigh or measure out.</param>
public sealed record BrewSheetItem(string What, string Amount);

/// <summary>Something that is read.</summary>
/// <param name="What">Which: <c>gravity</c>.</param>
/// <param name="Planned">Low to high, as planned; empty where nobody knows.</param>
public sealed record BrewSheetBlank(string What, string Planned);

/// <summary>A caution.</summary>
/// <param name="Words">It in two or three words, and in full.</param>
/// <param name="IsGrave">Whether it stands in full however little room there is.</param>
public sealed record BrewSheetCaution(SheetCaution Words, bool IsGrave);

/// <summary>A case, and what to do then.</summary>
/// <param name="When">Which case: "Copper-up, a point low".</param>
/// <param name="Do">What to do.</param>
public sealed record BrewSheetMend(string When, string Do);
