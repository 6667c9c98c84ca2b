using Nestmark.Input.Yaml;
using Nestmark.Nesting;

namespace Nestmark.Input;

/// <summary>A rule of matching as read, before its pieces are known.</summary>
internal sealed record MatchDraft(MatchRule Rule, TextNode Node, string Item);
