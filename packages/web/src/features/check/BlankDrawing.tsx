/** The sheet before there is anything to draw: where the three pins will stand, in hidden lines. */
export function BlankDrawing() {
  return (
    <svg className="blank-drawing" viewBox="0 0 420 330" aria-hidden="true">
      <g className="blank-centre">
        <path d="M210 10V278M40 240H380M150 70H270" />
        <path d="M90 205V275M330 205V275" />
      </g>
      <g className="blank-hidden">
        <circle cx="210" cy="70" r="17" />
        <circle cx="90" cy="240" r="20" />
        <circle cx="330" cy="240" r="20" />
        <path d="M196 82 102 222M224 82 318 222" />
      </g>
      <g className="blank-measure">
        <path d="M90 284v34M330 284v34M94 312h232M140 70H28M60 240H28M34 75v160" />
        <path
          className="blank-arrow"
          d="m90 312 13-3.4v6.8zM330 312l-13-3.4v6.8zM34 70l3.4 13h-6.8zM34 240l3.4-13h-6.8z"
        />
      </g>
      <text x="210" y="306">
        ?
      </text>
      <text x="50" y="161">
        ?
      </text>
    </svg>
  );
}
