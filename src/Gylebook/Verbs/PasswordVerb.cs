using System.ComponentModel;
using System.Text;
using Gylebook.Store;
using Gylebook.Terminal;
using Gylebook.Web.Hosting.Entry;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Gylebook.Verbs;

/// <summary>gylebook password [--helper] [--remove] [--book FILE]</summary>
internal sealed class PasswordVerb : AsyncCommand<PasswordVerb.Settings>
{
    /// <summary>What it takes: no password, which a list of running programs would show.</summary>
    internal sealed class Settings : CommandSettings
    {
        /// <summary>The book's file.</summary>
        [CommandOption("--book <FILE>")]
        [Description("The book's file. Without it, the book in your data folder.")]
        public string? Book { get; init; }

        /// <summary>Whether it is a helper's.</summary>
        [CommandOption("--helper")]
        [Description("The password of a helper, who may tap and read on brew day and change nothing else.")]
        public bool Helper { get; init; }

        /// <summary>Whether to let no helper in any more.</summary>
        [CommandOption("--remove")]
        [Description("With --helper: lets no helper in any more.")]
        public bool Remove { get; init; }

        /// <inheritdoc/>
        public override ValidationResult Validate() =>
            Remove && !Helper ? ValidationResult.Error("Option '--remove' needs '--helper' beside it: an owner's password is changed, not removed.")
            : CommandLine.NoneLacksItsValue(("--book", "a file", Book));
    }

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (await BookOption.OpenAsync(settings.Book, "to set a password for", cancellationToken) is not { } opened)
        {
            return 1;
        }

        await using Book book = opened;
        Passwords passwords = new(book);
        if (settings.Remove)
        {
            await passwords.RemoveHelperAsync(cancellationToken);
            Console.WriteLine("No helper comes in any more.");
            return 0;
        }

        string whose = settings.Helper ? "helper's" : "owner's";
        string password = Ask($"The {whose} password: ");
        string? fault = !Console.IsInputRedirected && Ask("Once more: ") != password ? "The two were not the same." : null;
        fault ??= await passwords.SetAsync(settings.Helper ? Who.Helper : Who.Owner, password, cancellationToken);
        if (fault is not null)
        {
            Console.Error.WriteLine(fault);
            return 1;
        }

        Console.WriteLine($"The {whose} password is set.");
        return 0;
    }

    /// <summary>A line that is typed unseen, or one that is piped in.</summary>
    private static string Ask(string prompt)
    {
        if (Console.IsInputRedirected)
        {
            return Console.In.ReadLine() ?? "";
        }

        Console.Write(prompt);
        StringBuilder typed = new();
        for (ConsoleKeyInfo key = Console.ReadKey(intercept: true); key.Key != ConsoleKey.Enter; key = Console.ReadKey(intercept: true))
        {
            if (key.Key == ConsoleKey.Backspace)
            {
                typed.Length = Math.Max(0, typed.Length - 1);
            }
            else if (key.KeyChar != '\0')
            {
                typed.Append(key.KeyChar);
            }
        }

        Console.WriteLine();
        return typed.ToString();
    }
}
