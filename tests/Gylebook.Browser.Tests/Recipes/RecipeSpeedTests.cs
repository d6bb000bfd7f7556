using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Gylebook.Browser.Tests.Recipes;

/// <summary>Fast typing: no key is lost. How long from a key to new numbers is told besides, not judged: machines differ.</summary>
public sealed class RecipeSpeedTests(ChromiumFixture chromium)
{
    private const int Keys = 122;

    private static readonly string[] Typed = ["Backspace", "9", "Backspace", "1"];

    // From the key's own time stamp to the frame that shows what was reckoned with it.
    private const string Watch =
        """
        () => {
          window.times = [];
          let key = 0;
          document.addEventListener('keydown', e => { key = e.timeStamp; }, true);
          new MutationObserver(() => {
            if (key > 0) {
              const from = key;
              key = 0;
              requestAnimationFrame(() => window.times.push(performance.now() - from));
            }
          }).observe(document.getElementById('run'), { attributes: true, attributeFilter: ['data-reckoned'] });
        }
        """;

    [Fact]
    public async Task A_hundred_keys_in_a_few_seconds_are_all_in_the_field_in_the_numbers_and_on_disk()
    {
        await using RunningGylebook gylebook = await RunningGylebook.StartAsync();
        RecipeTab one = await RecipeTab.OpenAsync(await chromium.TabAsync(gylebook.Url), "Hedgerow Brown");
        await one.TypeAsync(one.PaleAle, "4.9");
        string expected = await one.Headline("originalGravity").InnerTextAsync();
        await one.TypeAsync(one.PaleAle, "4.1");
        await Assertions.Expect(one.Headline("originalGravity")).Not.ToHaveTextAsync(expected);

        // What the book made of the last text is there before the next is typed.
        await Assertions.Expect(one.PaleAle).ToHaveValueAsync("4.1 kg");
        await one.Page.EvaluateAsync(Watch);
        await one.PaleAle.FillAsync("4.1");
        await one.PaleAle.PressAsync("End");
        for (int i = 0; i < Keys; i++)
        {
            // 4.1, "4.", 4.9, "4." …: weights and halves of weights. Now and then a pause, so that saving is among it.
            await one.Page.Keyboard.PressAsync(Typed[i % Typed.Length]);
            await one.Page.WaitForTimeoutAsync(i % 11 == 10 ? 450 : 40);
        }

        await Assertions.Expect(one.PaleAle).ToHaveValueAsync("4.9");
        await Assertions.Expect(one.Headline("originalGravity")).ToHaveTextAsync(expected);
        Assert.Null(await one.PaleAle.GetAttributeAsync("aria-invalid"));
        double[] times = [.. (await one.Page.EvaluateAsync<double[]>("() => window.times")).Order()];
        await one.PaleAle.BlurAsync();
        await Assertions.Expect(one.Undo).ToHaveAccessibleNameAsync(new Regex("→ 4\\.9 kg$"));
        await one.Page.ReloadAsync();
        await Assertions.Expect(one.PaleAle).ToHaveValueAsync("4.9 kg");
        if (times.Length > 0)
        {
            TestContext.Current.TestOutputHelper!.WriteLine($"{times.Length} keys: p50 {times[times.Length / 2]:0.0} ms, p95 {times[times.Length * 95 / 100]:0.0} ms, most {times[^1]:0.0} ms");
        }
    }
}
