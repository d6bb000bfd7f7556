using System.Text;
using QRCoder;

namespace Gylebook.Terminal;

/// <summary>A QR code (ISO/IEC 18004) in half-block characters: two rows of modules to a line, light ones drawn, for a dark terminal.</summary>
internal static class QrText
{
    /// <summary>The code of a text, with the light edge of four modules that the standard asks for.</summary>
    public static string Of(string text)
    {
        using QRCodeData code = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.L);
        StringBuilder drawn = new();
        for (int row = 0; row < code.ModuleMatrix.Count; row += 2)
        {
            for (int column = 0; column < code.ModuleMatrix[row].Count; column++)
            {
                drawn.Append((IsLight(code, row, column), IsLight(code, row + 1, column)) switch
                {
                    (true, true) => '█',
                    (true, false) => '▀',
                    (false, true) => '▄',
                    _ => ' ',
                });
            }

            drawn.Append('\n');
        }

        return drawn.ToString();
    }

    /// <summary>Below the last row, whose number is odd, there is edge.</summary>
    private static bool IsLight(QRCodeData code, int row, int column) => row >= code.ModuleMatrix.Count || !code.ModuleMatrix[row][column];
}
