namespace Gylebook.Engine.Parameters;

/// <summary>Where in a draw a parameter's number stands. Only the list that lays parameters out gives slots away.</summary>
public readonly record struct Slot
{
    internal Slot(int index) => Index = index;

    /// <summary>Place in the draw, from 0.</summary>
    internal int Index { get; }
}

/// <summary>Slots of parameters that stand behind each other: what describes one malt, or one food.</summary>
public readonly record struct SlotBlock
{
    internal SlotBlock(int first) => First = first;

    internal int First { get; }

    /// <summary>The nth slot of the block, from 0.</summary>
    public Slot this[int nth] => new(First + nth);
}
