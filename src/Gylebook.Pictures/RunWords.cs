using Gylebook.Engine.State;

namespace Gylebook.Pictures;

/// <summary>Which stages of a run are drawn, and on the way into which of them something happens.</summary>
internal static class RunWords
{
    /// <summary>The first stage of a portion of its own.</summary>
    public const Stage Parting = Stage.Split;

    /// <summary>Whether a stage is drawn; what happens at one that is not is told on the way to the next one that is. Cooling loses nothing.</summary>
    public static bool IsDrawn(Stage stage) => stage is not
        (Stage.Rinse or Stage.RunOff or Stage.TopUp or Stage.Boil or Stage.Chill or Stage.Blend or Stage.Crash or Stage.Condition);

    /// <summary>
    /// The stage on whose way something goes in: before its stage is over, save at knock-out, which is the moment the flame goes
    /// off, and at racking, where it goes to the racked beer.
    /// </summary>
    public static Stage OfAddition(Place place) => place.Stage switch
    {
        Stage.KnockOut => Stage.Stand,
        Stage.Rack => Stage.Package,
        var stage => stage,
    };
}
