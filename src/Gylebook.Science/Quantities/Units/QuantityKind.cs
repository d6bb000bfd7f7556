namespace Gylebook.Science.Quantities;

/// <summary>Quantities that are written in the same units: cold and hot volumes, or the gravity and its extract.</summary>
public sealed class QuantityKind
{
    private readonly Dictionary<string, Unit> _bySpelling = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Unit> _byAnyCase = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>A kind with its units; the base unit is the one on <see cref="UnitScale.Base"/>.</summary>
    /// <param name="noun">What it is, with its article: "a mass".</param>
    /// <param name="quantities">The quantities it covers.</param>
    /// <param name="units">Its units, the most usual first.</param>
    public QuantityKind(string noun, IReadOnlyList<QuantityLimits> quantities, IReadOnlyList<Unit> units)
    {
        Noun = noun;
        Quantities = quantities;
        Units = units;
        foreach (Unit unit in units)
        {
            foreach (string spelling in unit.Spellings.Prepend(unit.Symbol).Distinct())
            {
                _bySpelling.Add(spelling, unit);
                _byAnyCase.TryAdd(spelling, unit);
            }
        }
    }

    /// <summary>What it is, with its article: "a mass".</summary>
    public string Noun { get; }

    /// <summary>The quantities it covers.</summary>
    public IReadOnlyList<QuantityLimits> Quantities { get; }

    /// <summary>Its units, the most usual first.</summary>
    public IReadOnlyList<Unit> Units { get; }

    /// <summary>Words refused because they mean more than one of the units.</summary>
    public IReadOnlyList<AmbiguousUnit> Ambiguous { get; init; } = [];

    /// <summary>How a number without a unit is read; null when it must have one.</summary>
    public BareNumber? Bare { get; init; }

    /// <summary>The unit with that spelling, or null.</summary>
    /// <remarks>
    /// As written first, then whatever its capitals ("KG"), except that a capital M never becomes a milli-: "Mg" is a
    /// thousand million times a milligram, and a guess between the two is not ours to make.
    /// </remarks>
    public Unit? Find(string spelling)
    {
        if (_bySpelling.TryGetValue(spelling, out Unit? exact))
        {
            return exact;
        }

        return _byAnyCase.TryGetValue(spelling, out Unit? unit) && !CouldBeMega(spelling, unit) ? unit : null;
    }

    /// <summary>The units a word could mean, or null when it is not ambiguous here.</summary>
    public AmbiguousUnit? FindAmbiguous(string spelling) => Ambiguous.FirstOrDefault(
        unit => unit.Spellings.Contains(spelling, StringComparer.OrdinalIgnoreCase));

    /// <summary>The unit with exactly that symbol.</summary>
    internal Unit WithSymbol(string symbol) => _bySpelling[symbol];

    /// <summary>All units, as they stand in messages: "kg, g, mg".</summary>
    internal string UnitList => string.Join(", ", Units.Select(unit => unit.Symbol).Where(symbol => symbol != "1"));

    /// <summary>The values one of the quantities can have: "0 kg to 1000000 kg"; a bare ratio is told in the kind's usual unit.</summary>
    internal string RangeOf(QuantityLimits limits)
    {
        Unit own = WithSymbol(limits.Unit);
        Unit told = own.Symbol == "1" ? Units[0] : own;
        return $"{In(told, own, limits.Low)} to {In(told, own, limits.High)}";
    }

    private static string In(Unit told, Unit own, double value) =>
        own.Scale.TryToBase(value, out double inBase) && told.Scale.TryFromBase(inBase, out double number)
            ? UnitTable.WithSymbol(told == own ? value : number, told, significantDigits: 15)
            : UnitTable.WithSymbol(value, own, significantDigits: 15);

    private static bool CouldBeMega(string typed, Unit found) =>
        typed[0] == 'M'
        && found.Symbol.Length > 1
        && found.Symbol.StartsWith('m')
        && !typed.StartsWith("mi", StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc/>
    public override string ToString() => Noun;
}
