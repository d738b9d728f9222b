namespace LureSim.Reports.Page;

/// <summary>A page as a server sends it, in UTF-8.</summary>
/// <param name="Html">Document; it asks for <see cref="PageBuilder.ScriptPath"/> and <see cref="PageBuilder.StylePath"/>.</param>
/// <param name="Script">Its one script.</param>
/// <param name="Style">Its one style.</param>
public sealed record ServedPage(byte[] Html, byte[] Script, byte[] Style);
