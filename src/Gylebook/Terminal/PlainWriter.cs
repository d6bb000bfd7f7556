using System.Globalization;
using System.Text;

namespace Gylebook.Terminal;

/// <summary>Writes to a terminal nothing that it would obey: whatever steers it is shown as <c>\u001B</c> instead.</summary>
/// <remarks>
/// Names and messages come from files and arguments that others made. The same spelling stands for the same character in
/// JSON, which therefore still says what it said.
/// </remarks>
/// <param name="terminal">Where it goes.</param>
internal sealed class PlainWriter(TextWriter terminal) : TextWriter(CultureInfo.InvariantCulture)
{
    /// <inheritdoc/>
    public override Encoding Encoding => terminal.Encoding;

    /// <summary>The program's output as it is, for who takes care of its words: see <see cref="TableConsole"/>.</summary>
    public static TextWriter Output { get; } = Console.Out;

    /// <summary>Puts one between the program and each of its two outputs.</summary>
    public static void Guard()
    {
        Console.SetOut(new PlainWriter(Output));
        Console.SetError(new PlainWriter(Console.Error));
    }

    /// <inheritdoc/>
    public override void Write(char value) => Write([value]);

    /// <inheritdoc/>
    public override void Write(string? value) => Write(value.AsSpan());

    /// <inheritdoc/>
    public override void Write(char[] buffer, int index, int count) => Write(buffer.AsSpan(index, count));

    /// <inheritdoc/>
    public override void Write(ReadOnlySpan<char> buffer) => terminal.Write(Plain(buffer));

    /// <inheritdoc/>
    public override void WriteLine(string? value) => terminal.WriteLine(Plain(value));

    /// <inheritdoc/>
    public override void WriteLine() => terminal.WriteLine();

    /// <inheritdoc/>
    public override void Flush() => terminal.Flush();

    /// <summary>The text with all that would steer a terminal spelt out.</summary>
    public static string Plain(ReadOnlySpan<char> text)
    {
        var plain = new StringBuilder(text.Length);
        for (int i = 0; i < text.Length; i++)
        {
            bool endsLine = text[i] == '\r' && i + 1 < text.Length && text[i + 1] == '\n';
            if (Steers(text[i]) && !endsLine)
            {
                plain.Append(CultureInfo.InvariantCulture, $"\\u{(int)text[i]:X4}");
            }
            else
            {
                plain.Append(text[i]);
            }
        }

        return plain.ToString();
    }

    /// <summary>Controls of both sets but tab and new line; marks that turn the direction of what follows; separators of lines.</summary>
    private static bool Steers(char letter) => letter switch
    {
        '\t' or '\n' => false,
        '\u061C' or '\u200E' or '\u200F' or '\u2028' or '\u2029' => true,
        >= '\u202A' and <= '\u202E' => true,
        >= '\u2066' and <= '\u2069' => true,
        _ => char.IsControl(letter),
    };
}
