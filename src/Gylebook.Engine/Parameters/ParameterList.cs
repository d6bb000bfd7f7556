namespace Gylebook.Engine.Parameters;

/// <summary>The parameters of a plan as they are found: the known ones first, in their fixed places, those of single ingredients after them.</summary>
public sealed class ParameterList
{
    private readonly List<Parameter?> _parameters;
    private readonly Dictionary<string, Slot> _slots = new(Names, StringComparer.Ordinal);
    private readonly Dictionary<object, SlotBlock> _blocks = new(ReferenceEqualityComparer.Instance);

    /// <summary>How many parameters every run has.</summary>
    public const int KnownCount = (int)Known.PitchCellsPerGram + 1;

    /// <summary>Names that most plans need no more than.</summary>
    private const int Names = 64;

    /// <summary>No parameter yet.</summary>
    /// <param name="besides">How many ingredients are likely to bring; no more than room.</param>
    public ParameterList(int besides = 0)
    {
        _parameters = new(KnownCount + besides);
        for (int i = 0; i < KnownCount; i++)
        {
            _parameters.Add(null);
        }
    }

    /// <summary>All of them.</summary>
    /// <exception cref="InvalidOperationException">A known parameter was never set.</exception>
    public Parameter[] All()
    {
        int unset = _parameters.IndexOf(null);
        return unset < 0 ? [.. _parameters!] : throw new InvalidOperationException($"The parameter {(Known)unset} was never set.");
    }

    /// <summary>Sets a known parameter.</summary>
    public void Set(Known place, Parameter parameter) => _parameters[(int)place] = parameter;

    /// <summary>A known parameter that is set already.</summary>
    public Parameter this[Known place] =>
        _parameters[(int)place] ?? throw new InvalidOperationException($"The parameter {place} was never set.");

    /// <summary>The slot of an ingredient's parameter, which several lines may share: the first one told of that id stands.</summary>
    public Slot Of(Parameter parameter)
    {
        ArgumentNullException.ThrowIfNull(parameter);
        if (!_slots.TryGetValue(parameter.Id, out Slot there))
        {
            there = new Slot(_parameters.Count);
            _parameters.Add(parameter);
            _slots.Add(parameter.Id, there);
        }

        return there;
    }

    /// <summary>The slot of a lot's parameter: lots of one thing that were assayed alike are one; another assay is another lot, and gets a number.</summary>
    public Slot Lot(Parameter parameter)
    {
        ArgumentNullException.ThrowIfNull(parameter);
        for (int lot = 1; ; lot++)
        {
            Parameter numbered = lot == 1 ? parameter : parameter with { Id = Invariant($"{parameter.Id}.{lot}") };
            if (!_slots.TryGetValue(numbered.Id, out Slot there) || _parameters[there.Index]!.Median == parameter.Median)
            {
                return Of(numbered);
            }
        }
    }

    /// <summary>The slots of parameters that belong together, laid side by side; the same array gets the same slots.</summary>
    public SlotBlock Block(Parameter[] parameters)
    {
        ArgumentNullException.ThrowIfNull(parameters);
        if (!_blocks.TryGetValue(parameters, out SlotBlock there))
        {
            there = new SlotBlock(_parameters.Count);
            _parameters.AddRange(parameters);
            _blocks.Add(parameters, there);
        }

        return there;
    }
}
