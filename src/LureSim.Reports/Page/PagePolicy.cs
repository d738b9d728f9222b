using System.Security.Cryptography;
using System.Text;

namespace LureSim.Reports.Page;

/// <summary>
/// The content policy of a page: nothing from anywhere, only the one script and the one style whose hashes stand in it (CSP level 3). WebAssembly may
/// be compiled, and blobs made by the page itself may be run and read: the solver comes out of the page that way.
/// </summary>
internal static class PagePolicy
{
    /// <summary>The policy.</summary>
    /// <param name="script">The inline script as it stands in the page.</param>
    /// <param name="style">The inline style.</param>
    public static string Of(string script, string style) => string.Join("; ",
        "default-src 'none'",
        $"script-src '{Hash(script)}' 'wasm-unsafe-eval' blob:",
        "worker-src blob:",
        "connect-src blob:",
        $"style-src '{Hash(style)}'",
        "img-src data:",
        "base-uri 'none'",
        "form-action 'none'");

    private static string Hash(string text) => "sha256-" + Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
