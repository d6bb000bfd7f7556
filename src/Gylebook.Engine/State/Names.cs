namespace Gylebook.Engine.State;

/// <summary>Stable names of stages and losses, as files and ids know them.</summary>
public static class Names
{
    /// <summary>A stage's: <c>copperUp</c>.</summary>
    public static string Of(Stage stage) => StageNames[(int)stage];

    /// <summary>A loss's: <c>heldInGrain</c>.</summary>
    public static string Of(Loss loss) => LossNames[(int)loss];

    private static readonly string[] StageNames = [.. Enum.GetNames<Stage>().Select(Camel)];
    private static readonly string[] LossNames = [.. Enum.GetNames<Loss>().Select(Camel)];

    private static string Camel(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
