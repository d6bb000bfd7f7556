using Gylebook.Engine.State;

namespace Gylebook.Engine.Running;

/// <summary>One step of a run: what is done, at which stage, to which portion, with which row of the plan.</summary>
/// <param name="Move">What is done.</param>
/// <param name="Stage">At which stage.</param>
/// <param name="From">The portion it happens to.</param>
/// <param name="To">The portion that receives; the same as <paramref name="From"/> where nothing moves.</param>
/// <param name="Row">Row of the plan's figures for that move; 0 where it has none.</param>
public readonly record struct Step(Move Move, Stage Stage, int From, int To, int Row)
{
    /// <summary>The states that it leaves to be looked at.</summary>
    public Place[] Leaves() => (LeavesFrom, LeavesTo) switch
    {
        (true, true) => [new(Stage, null, From), new(Stage, null, To)],
        (true, false) => [new(Stage, null, From)],
        (false, true) => [new(Stage, null, To)],
        _ => [],
    };

    /// <summary>Whether the portion it happens to is left to be looked at.</summary>
    internal bool LeavesFrom => Move is Move.PartGrain or Move.Divide;

    /// <summary>Whether the portion that receives is left to be looked at.</summary>
    internal bool LeavesTo => Move is not (Move.AddIngredient or Move.DropGrain or Move.Steep or Move.FermentOut or Move.PartGrain);

    /// <summary>What may be lost in it.</summary>
    public (Loss Loss, Place Place)[] Loses() => Move switch
    {
        Move.DropGrain => [(Loss.TunDeadSpace, new(Stage.RunOff, null, To)), (Loss.HeldInGrain, new(Stage, null, From))],
        Move.BoilOff => [(Loss.Steam, new(Stage, null, To))],
        Move.CastOver => [(Loss.SpentHops, new(Stage, null, To)), (Loss.KettleSolids, new(Stage, null, To)), (Loss.Kettle, new(Stage, null, To))],
        Move.FermentOut or Move.MakeAcid => [(Loss.Gas, new(Stage, null, To))],
        Move.RackOff => [(Loss.Sludge, new(Stage, null, To)), (Loss.Racking, new(Stage, null, To))],
        _ => [],
    };
}

/// <summary>All that can be done to a portion.</summary>
public enum Move
{
    /// <summary>Liquor goes in.</summary>
    AddLiquor,

    /// <summary>An ingredient goes in.</summary>
    AddIngredient,

    /// <summary>Starch becomes sugar.</summary>
    ConvertStarch,

    /// <summary>Grain and wort part; the grain lies in the other portion from now on.</summary>
    PartGrain,

    /// <summary>The grain in the other portion is rinsed into this one.</summary>
    RinseGrain,

    /// <summary>The grain leaves for good.</summary>
    DropGrain,

    /// <summary>Nothing is done: the state is looked at.</summary>
    Look,

    /// <summary>Lactic bacteria sour the wort.</summary>
    MakeAcid,

    /// <summary>Some minutes of boil.</summary>
    BoilOff,

    /// <summary>Hops steep in hot wort, standing or cooling.</summary>
    Steep,

    /// <summary>Flame off: break, bitterness and colour are settled.</summary>
    Settle,

    /// <summary>From the kettle to the fermenter.</summary>
    CastOver,

    /// <summary>A share goes to the other portion.</summary>
    Divide,

    /// <summary>All of the other portion comes into this one.</summary>
    Join,

    /// <summary>The yeast takes what it takes.</summary>
    FermentOut,

    /// <summary>Fermentation is over.</summary>
    EndFermentation,

    /// <summary>Clear beer off its sludge.</summary>
    RackOff,

    /// <summary>Into bottles or keg, with what primes it.</summary>
    Fill,

    /// <summary>Gas made or taken up in the package.</summary>
    MakeGas,
}
