using Spectre.Console;

namespace Gylebook.Terminal;

/// <summary>Small courtesies between a shell and the verbs.</summary>
internal static class CommandLine
{
    /// <summary>What the parser (Spectre.Console.Cli 0.57.2) hands over when the last option lacks its value.</summary>
    public const string MissingValue = "__default_command";

    /// <summary>Options that need no verb before them.</summary>
    private static readonly string[] Serving = ["--book", "--urls", "--lan", "--host", "--cert", "--cert-key"];

    /// <summary>Refuses the first option that was named without its value.</summary>
    /// <param name="options">Each option's name, what must follow it, and what did.</param>
    public static ValidationResult NoneLacksItsValue(params ReadOnlySpan<(string Name, string Wants, string? Value)> options)
    {
        foreach ((string name, string wants, string? value) in options)
        {
            if (value == MissingValue)
            {
                return ValidationResult.Error($"Option '{name}' needs {wants} after it.");
            }
        }

        return ValidationResult.Success();
    }

    /// <summary>An argument such as "-5 °C" with a typographic minus, so that it is not taken for an option.</summary>
    /// <remarks>No option of ours begins with a digit, and every reader of numbers knows both signs.</remarks>
    public static string KeepNegativeNumber(string argument) =>
        argument.Length > 1 && argument[0] == '-' && (char.IsAsciiDigit(argument[1]) || argument[1] is '.' or ',')
            ? string.Concat("\u2212", argument.AsSpan(1))
            : argument;

    /// <summary>The arguments, with the verb <c>serve</c> in front when they start without one.</summary>
    public static string[] WithVerb(string[] arguments) =>
        arguments.Length == 0 || Serving.Contains(arguments[0].Split('=')[0]) ? ["serve", .. arguments] : arguments;

    /// <summary>A message on one line.</summary>
    public static string OneLine(string message) =>
        string.Join(' ', message.Split(['\r', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
}
