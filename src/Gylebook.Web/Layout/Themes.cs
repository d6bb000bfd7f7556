namespace Gylebook.Web.Layout;

/// <summary>Light, dark, or as the device says.</summary>
public static class Themes
{
    /// <summary>The setting's name in the book.</summary>
    public const string Key = "theme";

    /// <summary>As the device says.</summary>
    public const string System = "system";

    /// <summary>Always light.</summary>
    public const string Light = "light";

    /// <summary>Always dark.</summary>
    public const string Dark = "dark";

    /// <summary>The setting if it is one we know, else <see cref="System"/>.</summary>
    public static string Known(string? setting) => setting is Light or Dark ? setting : System;
}
