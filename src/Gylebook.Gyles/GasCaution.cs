namespace Gylebook.Gyles;

/// <summary>What carbon dioxide can do, wherever beer gives it off or is given it.</summary>
public static class GasCaution
{
    /// <summary>In a sentence.</summary>
    public const string Sentence = "Carbon dioxide pools low in a closed room, in a chest freezer or a cellar: air it before you lean in, and never put your head into a fermenter.";
}
