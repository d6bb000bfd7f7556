using System.Globalization;

namespace Gylebook.Store;

/// <summary>Something in the book that is no longer what was written: the disk has changed it.</summary>
/// <param name="What">What it is, with its name: <c>the draft of the recipe "Hedgerow brown"</c>.</param>
/// <param name="OwnerId">The recipe, kit, food or water plan it belongs to; null for what belongs to none, or cannot be told any more.</param>
/// <param name="Sound">The owner's newest text that is sound; null when the book holds none.</param>
public sealed record DamagedPlace(string What, Guid? OwnerId, SoundText? Sound)
{
    /// <summary>A sentence that names the damage, and where a sound text is.</summary>
    public string Sentence =>
        $"{What} is damaged."
        + (Sound is { } sound
            ? string.Create(CultureInfo.InvariantCulture, $" The newest sound text is that of {sound.From}, {sound.At:yyyy-MM-dd HH:mm} UTC.")
            : OwnerId is null ? "" : " The book holds no sound text of it.");
}

/// <summary>A text in the book that is just as it was written.</summary>
/// <param name="Document">The whole text.</param>
/// <param name="From">Where it stands: <c>the edit "Mash temperature"</c>.</param>
/// <param name="At">When it was written.</param>
public sealed record SoundText(string Document, string From, DateTimeOffset At);
