using Spectre.Console;
using Spectre.Console.Rendering;

namespace Gylebook.Terminal;

/// <summary>Where tables are written: with bold titles on a terminal, without when piped; their words steer nothing.</summary>
internal static class TableConsole
{
    private const int PipedWidth = 110;

    /// <summary>A console on the program's own output, which must not spell out the console's own escapes.</summary>
    public static IAnsiConsole Create()
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = new AnsiConsoleOutput(PlainWriter.Output),
            Ansi = Console.IsOutputRedirected ? AnsiSupport.No : AnsiSupport.Detect,
        });
        console.Pipeline.Attach(new PlainWords());
        if (Console.IsOutputRedirected)
        {
            console.Profile.Width = PipedWidth;
        }

        return console;
    }

    private sealed class PlainWords : IRenderHook
    {
        public IEnumerable<IRenderable> Process(RenderOptions options, IEnumerable<IRenderable> renderables) =>
            renderables.Select(what => new Plain(what));
    }

    private sealed class Plain(IRenderable what) : IRenderable
    {
        public Measurement Measure(RenderOptions options, int maxWidth) => what.Measure(options, maxWidth);

        public IEnumerable<Segment> Render(RenderOptions options, int maxWidth) =>
            what.Render(options, maxWidth).Select(part =>
                part.IsControlCode || part.IsLineBreak ? part : new Segment(PlainWriter.Plain(part.Text), part.Style));
    }
}
