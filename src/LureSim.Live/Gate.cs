using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http;

namespace LureSim.Live;

/// <summary>
/// Who may ask. The server listens on the loopback address alone, yet every page in a browser on the same machine can send it requests, and a name that
/// somebody else owns can be made to point at it; hence: the host must be the one that was printed, whoever wants something done must come from the page
/// itself, and must know the token that stands in the page's address and was sent nowhere.
/// </summary>
/// <param name="token">Secret of this start.</param>
internal sealed class Gate(string token)
{
    /// <summary>Header that carries the token.</summary>
    public const string Header = "X-LureSim-Token";

    private const int TokenBytes = 24;

    private readonly byte[] _token = Encoding.ASCII.GetBytes(token);

    /// <summary>A token nobody can guess.</summary>
    public static string NewToken() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(TokenBytes));

    /// <summary>Why a request is refused: status and words; null when it may go on.</summary>
    /// <param name="request">Request.</param>
    /// <param name="port">Port that the server listens on.</param>
    public (int Status, string Words)? Refusal(HttpRequest request, int port)
    {
        string host = request.Host.Value ?? "";
        if (host != $"127.0.0.1:{port}" && host != $"localhost:{port}")
        {
            return (StatusCodes.Status400BadRequest, "this address is not the one that was printed");
        }

        if (HttpMethods.IsGet(request.Method))
        {
            return null;
        }

        if (!HttpMethods.IsPost(request.Method))
        {
            return (StatusCodes.Status405MethodNotAllowed, "only GET and POST are answered");
        }

        return request.Headers.Origin != $"http://{host}" || request.Headers["Sec-Fetch-Site"] is not ([] or ["same-origin"])
            ? (StatusCodes.Status403Forbidden, "only the page itself may ask")
            : !Knows(request.Headers[Header].ToString()) ? (StatusCodes.Status403Forbidden, "the token is missing or wrong; open the address that was printed")
            : request.ContentType?.Split(';')[0] != "application/json" ? (StatusCodes.Status415UnsupportedMediaType, "JSON is due")
            : null;
    }

    // As long for a wrong first letter as for a wrong last one.
    private bool Knows(string given) => CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(given), _token);
}
