namespace Gylebook.Engine.State;

/// <summary>The one file of names of stages, losses and places: as files and ids know them, and as people say them.</summary>
public static class Names
{
    /// <summary>A stage's stable name: <c>copperUp</c>.</summary>
    public static string Of(Stage stage) => Stages[(int)stage].Name;

    /// <summary>A loss's stable name: <c>heldInGrain</c>.</summary>
    public static string Of(Loss loss) => Losses[(int)loss].Name;

    /// <summary>A stage as a brewer says it: <c>copper-up</c>.</summary>
    public static string Said(Stage stage) => Stages[(int)stage].Said;

    /// <summary>A loss as a brewer says it: <c>held in the grain</c>.</summary>
    public static string Said(Loss loss) => Losses[(int)loss].Said;

    /// <summary>A place as recipes and brewers say it: <c>boil 60 min</c>, <c>pitch</c>, <c>ferment day 3</c>. Its portion is named by the recipe.</summary>
    public static string Said(Place place) => place switch
    {
        (Stage.Ferment, 0, _) => "pitch",
        (Stage.Boil or Stage.Stand, { } minutes, _) => Invariant($"{Said(place.Stage)} {minutes:0.##} min"),
        (Stage.Ferment, { } day, _) => Invariant($"ferment day {day:0.##}"),
        _ => Said(place.Stage),
    };

    /// <summary>What the liquid is once a stage is over, as a picture of the run writes it: <c>Fermented</c>.</summary>
    public static string Reached(Stage stage) => Stages[(int)stage].Reached;

    /// <summary>By stage, in the order of the enumeration.</summary>
    private static readonly (string Name, string Said, string Reached)[] Stages = ByValue<Stage>(stage => stage switch
    {
        Stage.Lift => ("lift", "Grain out"),
        Stage.RunOff => ("run-off", "Run off"),
        Stage.Rinse => ("rinse", "Rinsed"),
        Stage.TopUp => ("top-up", "Topped up"),
        Stage.CopperUp => ("copper-up", "Copper-up"),
        Stage.Sour => ("sour", "Soured"),
        Stage.Boil => ("boil", "Boiled"),
        Stage.KnockOut => ("knock-out", "Knock-out"),
        Stage.Chill => ("chill", "Chilled"),
        Stage.Blend => ("blend", "Blended"),
        Stage.Split => ("split", "Parted"),
        Stage.Ferment => ("ferment", "Fermented"),
        Stage.Crash => ("crash", "Crashed"),
        Stage.Rack => ("rack", "Racked"),
        Stage.Package => ("package", "Packaged"),
        Stage.Condition => ("condition", "Conditioned"),
        Stage.Pour => ("pour", "In the glass"),
        _ => (stage.ToString().ToLowerInvariant(), stage.ToString()),
    });

    /// <summary>By loss, in the order of the enumeration.</summary>
    private static readonly (string Name, string Said, string Reached)[] Losses = ByValue<Loss>(loss => (
        loss switch
        {
            Loss.HeldInGrain => "held in the grain",
            Loss.TunDeadSpace => "under the tun",
            Loss.Kettle => "left in the kettle",
            Loss.SpentHops => "held in the hops",
            Loss.KettleSolids => "solids in the kettle",
            Loss.Sludge => "held in the sludge",
            Loss.Gas => "carbon dioxide",
            Loss.Racking => "left at racking",
            _ => loss.ToString().ToLowerInvariant(),
        },
        ""));

    private static (string Name, string Said, string Reached)[] ByValue<T>(Func<T, (string Said, string Reached)> words)
        where T : struct, Enum =>
        [.. Enum.GetValues<T>().Select(value => (Camel(value.ToString()), words(value).Said, words(value).Reached))];

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
