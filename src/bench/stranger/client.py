"""A browser that does what it likes, at the bench that stranger.sh started."""
import http.client, ssl, json, socket, time, random, os
CTX=ssl.create_default_context(); CTX.check_hostname=False; CTX.verify_mode=ssl.CERT_NONE
HOST,PORT='localhost',int(os.environ['PORT'])
ORIGIN=f'https://{HOST}:{PORT}'
PP='four lamps on a bridge'
FOLDER=os.environ['FOLDER']
BAD=[]

def ok(what, holds, more=''):
    print(('ok   ' if holds else 'BAD  ') + what, str(more)[:200] if not holds else '')
    if not holds: BAD.append(what)

def ends():
    print('holds, all of it' if not BAD else 'DOES NOT HOLD: ' + '; '.join(BAD))
    raise SystemExit(1 if BAD else 0)

class Tab:
    def __init__(self, src=None):
        self.src=src; self.cookie=''; self.c=None; self.last=None
    def conn(self):
        if self.c is None:
            self.c=http.client.HTTPSConnection('127.0.0.1',PORT,context=CTX,timeout=60,source_address=(self.src,0) if self.src else None)
        return self.c
    def req(self, method, path, body=None, headers=None, ctype='application/json', origin=ORIGIN, raw=False):
        h={'Host':f'{HOST}:{PORT}'}
        if self.cookie: h['Cookie']=self.cookie
        if method=='POST':
            if ctype: h['Content-Type']=ctype
            if origin: h['Origin']=origin
            if not isinstance(body,(bytes,type(None))): body=json.dumps(body).encode()
            if body is None: body=b'{}'
        h.update(headers or {})
        for attempt in (1,2):
            try:
                c=self.conn(); c.request(method,path,body,h); r=c.getresponse(); data=r.read(); break
            except (http.client.HTTPException, OSError):
                self.c=None
                if attempt==2: raise
        self.last=r
        if r.getheader('Connection')=='close': self.c=None
        sc=r.getheader('Set-Cookie')
        if sc: self.cookie=sc.split(';')[0]
        return (r.status, data if raw else data.decode('utf8','replace'))
    def get(self,p,**k): return self.req('GET',p,**k)
    def post(self,p,b=None,**k): return self.req('POST',p,b,**k)
    def sign(self,name,pp=PP): return self.post('/api/sign-in',{'name':name,'passphrase':pp})
    def js(self,p): return json.loads(self.get(p)[1])
def tab(name,src=None):
    t=Tab(src); s,b=t.sign(name); assert s==200,(name,s,b); return t
